/** Silence for five minutes at most; it ends by itself and can't be lengthened while it lasts. What is seen is never muted. */
import { useEffect, useRef, useState } from 'react';

export const longestMuteS = 300;

/** @param onEnd when the silence is over, by itself or by a tap */
export function useMute(onEnd: () => void) {
  const [endsAtMs, setEndsAtMs] = useState<number>();
  const [leftS, setLeftS] = useState(0);
  const end = useRef(onEnd);
  end.current = onEnd;

  useEffect(() => {
    if (endsAtMs === undefined) return;
    const look = () => {
      const left = Math.ceil((endsAtMs - performance.now()) / 1000);
      setLeftS(left);
      if (left > 0) return;
      setEndsAtMs(undefined);
      end.current();
    };
    look();
    const timer = setInterval(look, 500);
    return () => clearInterval(timer);
  }, [endsAtMs]);

  return {
    /** 0: nothing is muted. */
    mutedForS: endsAtMs === undefined ? 0 : leftS,
    isMuted: () => endsAtMs !== undefined && performance.now() < endsAtMs,
    mute: () => setEndsAtMs((was) => was ?? performance.now() + longestMuteS * 1000),
    unmute() {
      if (endsAtMs === undefined) return;
      setEndsAtMs(undefined);
      end.current();
    },
  };
}
