import { useEffect, useState } from 'react';

/** The time of day, ms since 1970, renewed every so often, and when the page comes back into view. */
export function useNow(everyMs: number): number {
  const [now, setNow] = useState(Date.now);
  useEffect(() => {
    const renew = () => setNow(Date.now());
    const timer = setInterval(renew, everyMs);
    document.addEventListener('visibilitychange', renew);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', renew);
    };
  }, [everyMs]);
  return now;
}
