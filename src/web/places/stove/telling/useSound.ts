/** Sound of this page: off until a tap, and said to be lost when the device takes it away. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { createSound, type Sound } from './sound.ts';
import type { Tone } from './tones.ts';

export type SoundState = 'off' | 'on' | 'lost' | 'not available';

/** @param wanted it was on before: any tap or key on the page brings it back */
export function useSound(wanted: boolean) {
  const [state, setState] = useState<SoundState>('off');
  const sound = useRef<Sound>(undefined);
  const opening = useRef<Promise<Sound | undefined>>(undefined);
  const close = useCallback(() => {
    sound.current?.close();
    sound.current = undefined;
  }, []);
  useEffect(() => close, [close]);

  const turnOn = useCallback(async (): Promise<void> => {
    if (opening.current) {
      await opening.current;
      return;
    }
    close();
    opening.current = createSound((runs) => setState(runs ? 'on' : 'lost'));
    sound.current = await opening.current;
    opening.current = undefined;
    setState(sound.current ? 'on' : 'not available');
  }, [close]);

  useEffect(() => {
    if (!wanted || state === 'on' || state === 'not available') return;
    const bringBack = () => void turnOn();
    window.addEventListener('click', bringBack);
    window.addEventListener('keydown', bringBack);
    return () => {
      window.removeEventListener('click', bringBack);
      window.removeEventListener('keydown', bringBack);
    };
  }, [wanted, state, turnOn]);

  useEffect(() => {
    const resume = () => document.visibilityState === 'visible' && sound.current?.resume();
    document.addEventListener('visibilitychange', resume);
    return () => document.removeEventListener('visibilitychange', resume);
  }, []);

  const play = useCallback((tone: Tone) => sound.current?.play(tone), []);
  return { state, turnOn, play };
}
