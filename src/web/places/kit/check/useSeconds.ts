/** Seconds since a moment, counted on while it runs. */
import { useEffect, useState } from 'react';

/** @param sinceMs the moment, ms since 1970; undefined while nothing runs */
export function useSeconds(sinceMs: number | undefined): number {
  const [nowMs, setNowMs] = useState(() => Date.now());
  useEffect(() => {
    if (sinceMs === undefined) return undefined;
    const look = () => setNowMs(Date.now());
    look();
    const timer = setInterval(look, 250);
    return () => clearInterval(timer);
  }, [sinceMs]);
  return sinceMs === undefined ? 0 : Math.max(0, (nowMs - sinceMs) / 1000);
}

/** `4:07` */
export function minutesText(seconds: number): string {
  const whole = Math.floor(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}
