/** A wet drip or a card that changes under the finger must not act: taps right after a change or another tap are passed over. */
import { useEffect, useRef } from 'react';

const guardMs = 250;

export function useGuard(changed: string): (act: () => void) => () => void {
  const until = useRef(0);
  const last = useRef(changed);
  useEffect(() => {
    if (last.current === changed) return;
    last.current = changed;
    until.current = performance.now() + guardMs;
  }, [changed]);
  return (act) => () => {
    if (performance.now() < until.current) return;
    until.current = performance.now() + guardMs;
    act();
  };
}
