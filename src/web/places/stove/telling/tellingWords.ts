/** How this device tells now, in words: nothing is called working that was only asked for. */
import type { Telling } from './useTelling.ts';

type Told = Pick<Telling, 'sound' | 'voice' | 'screen' | 'mutedForS'> & {
  readonly settings: Pick<Telling['settings'], 'voice' | 'screen' | 'heard'>;
};

export function tellingWords({ sound, voice, screen, mutedForS, settings }: Told): string {
  const { heard } = settings;
  const soundWords = {
    off: 'Sound is off.',
    on: heard?.answer === 'yes' ? 'Sound is on.' : 'Sound is on, and not yet tested at the stove.',
    lost: 'This device has stopped the sound: tap.',
    'not available': 'Sound is not available here: watch the card.',
  }[sound];
  const voiceWords = settings.voice && voice === 'not available' ? 'No voice here.' : '';
  const screenWords = {
    off: '',
    asked: '',
    lost: 'The screen may go dark.',
    'not available': 'The screen may go dark: set its timeout to 30 min.',
  }[screen];
  return [mutedForS > 0 ? 'Muted.' : soundWords, voiceWords, screenWords].filter(Boolean).join(' ');
}
