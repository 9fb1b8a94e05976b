/** Sound, off until it is tapped on. The page works without. */
import { useEffect, useRef, useState } from 'react';
import type { Card } from './card.ts';
import { createSound, type Sound } from './sound.ts';

interface SoundSwitchProps {
  readonly cardKey: string;
  readonly urgency: Card['urgency'];
}

type State = 'off' | 'on' | 'not available';

export function SoundSwitch({ cardKey, urgency }: SoundSwitchProps) {
  const [state, setState] = useState<State>('off');
  const sound = useRef<Sound>(undefined);
  useEffect(() => () => sound.current?.close(), []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: it sounds when the card is another one
  useEffect(() => {
    if (urgency !== 'go on') sound.current?.play(urgency === 'act now' ? 'act now' : 'advice');
  }, [cardKey, urgency]);

  const toggle = async () => {
    if (sound.current) {
      sound.current.close();
      sound.current = undefined;
      setState('off');
      return;
    }
    sound.current = await createSound();
    sound.current?.play('advice');
    setState(sound.current ? 'on' : 'not available');
  };
  return (
    <p className="sound">
      <button type="button" aria-pressed={state === 'on'} onClick={() => void toggle()}>
        {state === 'on' ? 'Sound off' : 'Sound on'}
      </button>
      <span role="status">
        {state === 'on' && 'Sound is on: two soft tones for advice, 3 + 2 pulses for act now.'}
        {state === 'off' && 'Sound is off.'}
        {state === 'not available' && 'Sound is not available here: watch the card.'}
      </span>
    </p>
  );
}
