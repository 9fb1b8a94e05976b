/** Whether an element has been on the screen or just beside it: what is dear waits until somebody could see it. */
import { type RefObject, useEffect, useState } from 'react';

/** So far beyond the edge counts as seen: what comes into view is under way. */
const beside = '200px';

export function useSeen(element: RefObject<Element | null>): boolean {
  const [seen, setSeen] = useState(false);
  useEffect(() => {
    if (!element.current || seen) return;
    const watch = new IntersectionObserver(
      (entries) => entries.some((entry) => entry.isIntersecting) && setSeen(true),
      {
        rootMargin: beside,
      },
    );
    watch.observe(element.current);
    return () => watch.disconnect();
  }, [element, seen]);
  return seen;
}
