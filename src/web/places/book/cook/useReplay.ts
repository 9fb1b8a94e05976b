/** The time in a cook that is looked at, and its going on by itself. */
import { useEffect, useRef, useState } from 'react';

export interface Replay {
  readonly atS: number;
  readonly playing: boolean;
  /** Cook seconds for each second. */
  readonly speed: number;
  goTo(timeS: number): void;
  play(): void;
  pause(): void;
  setSpeed(speed: number): void;
}

export function useReplay(endS: number): Replay {
  const [atS, setAtS] = useState<number>();
  const [playing, setPlaying] = useState(false);
  const [speed, setSpeed] = useState(60);
  const at = Math.min(endS, atS ?? endS);
  const now = useRef(at);
  now.current = at;

  useEffect(() => {
    if (!playing) return;
    let before = performance.now();
    let frame = requestAnimationFrame(function go(ms) {
      const next = now.current + ((ms - before) / 1000) * speed;
      before = ms;
      setAtS(Math.min(endS, next));
      if (next >= endS) setPlaying(false);
      else frame = requestAnimationFrame(go);
    });
    return () => cancelAnimationFrame(frame);
  }, [playing, speed, endS]);

  return {
    atS: at,
    playing,
    speed,
    goTo(timeS) {
      setPlaying(false);
      setAtS(Math.min(endS, Math.max(0, timeS)));
    },
    play() {
      if (at >= endS) setAtS(0);
      setPlaying(true);
    },
    pause: () => setPlaying(false),
    setSpeed,
  };
}
