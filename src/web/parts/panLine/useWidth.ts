import { useLayoutEffect, useRef, useState } from 'react';

/** The width of an element as it is laid out, px. */
export function useWidth() {
  const frame = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(640);
  useLayoutEffect(() => {
    const element = frame.current;
    if (!element) return;
    // Nothing is drawn for a width of nothing, as when the page is printed and the figure is away.
    const measure = () => element.clientWidth > 0 && setWidth(element.clientWidth);
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [frame, width] as const;
}
