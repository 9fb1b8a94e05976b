/** How this device is to tell; kept on the device, since another one stands elsewhere. */
import { keep, kept } from '../../../parts/browserStorage.ts';

export interface TellingSettings {
  /** Turned on once: from then on the first tap on the page brings it back. */
  readonly sound: boolean;
  /** Soft tones for new advice. */
  readonly prompts: boolean;
  readonly vibration: boolean;
  readonly voice: boolean;
  /** Ask for the screen to be kept on. */
  readonly screen: boolean;
  /** Answer to the test of the alarm at the stove. */
  readonly heard: Heard | null;
}

export interface Heard {
  readonly answer: 'yes' | 'no';
  /** `2026-03-14` */
  readonly day: string;
}

export const usualTelling: TellingSettings = {
  sound: false,
  prompts: true,
  vibration: true,
  voice: false,
  screen: true,
  heard: null,
};

const key = 'umberpan.telling';

export const keptTelling = (): TellingSettings => tellingFrom(kept(key));
export const keepTelling = (settings: TellingSettings): void => keep(key, JSON.stringify(settings));

/** What can't be read is as usual. */
export function tellingFrom(text: string | null): TellingSettings {
  const read = readRecord(text);
  const flag = (name: 'sound' | 'prompts' | 'vibration' | 'voice' | 'screen') =>
    typeof read[name] === 'boolean' ? read[name] : usualTelling[name];
  return {
    sound: flag('sound'),
    prompts: flag('prompts'),
    vibration: flag('vibration'),
    voice: flag('voice'),
    screen: flag('screen'),
    heard: isHeard(read['heard']) ? read['heard'] : null,
  };
}

function readRecord(text: string | null): Readonly<Record<string, unknown>> {
  try {
    const read: unknown = JSON.parse(text ?? '');
    return typeof read === 'object' && read !== null ? { ...read } : {};
  } catch {
    return {};
  }
}

function isHeard(read: unknown): read is Heard {
  if (typeof read !== 'object' || read === null || !('answer' in read) || !('day' in read)) return false;
  return (read.answer === 'yes' || read.answer === 'no') && typeof read.day === 'string';
}
