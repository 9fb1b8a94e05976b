/** What this device can do at the stove, and what to do instead where it can't. Nothing is called working that was only asked for. */
import type { Heard } from './settings.ts';
import type { ScreenState } from './useScreenOn.ts';
import type { SoundState } from './useSound.ts';
import type { StoreFacts } from './useStoreFacts.ts';
import type { VoiceState } from './useVoice.ts';

export interface DeviceFacts extends StoreFacts {
  /** Over https or on this very machine; plain http in the home network is not. */
  readonly secure: boolean;
  readonly sound: SoundState;
  readonly heard: Heard | null;
  readonly canVibrate: boolean;
  readonly vibration: boolean;
  readonly voice: VoiceState;
  readonly screen: ScreenState;
}

export type CapabilityState = 'tested' | 'asked' | 'not tried' | 'off' | 'lost' | 'not available';
export type CapabilityName = 'sound' | 'vibration' | 'voice' | 'screen' | 'offline' | 'entries';

export interface Capability {
  readonly name: CapabilityName;
  readonly title: string;
  readonly state: CapabilityState;
  readonly words: string;
}

export const stateWords: Readonly<Record<CapabilityState, string>> = {
  tested: 'Yes, tested',
  asked: 'Asked',
  'not tried': 'Not tried yet',
  off: 'Off',
  lost: 'Lost',
  'not available': 'Not available',
};

type Told = Pick<Capability, 'state' | 'words'>;

export function capabilities(facts: DeviceFacts): readonly Capability[] {
  return [
    { name: 'sound', title: 'Sound', ...soundOf(facts) },
    { name: 'vibration', title: 'Vibration', ...vibrationOf(facts) },
    { name: 'voice', title: 'Voice', ...voiceOf(facts) },
    { name: 'screen', title: 'Screen kept on', ...screenOf(facts) },
    { name: 'offline', title: 'Works without the network', ...offlineOf(facts) },
    { name: 'entries', title: 'Keeps entries', ...entriesOf(facts) },
  ];
}

function soundOf({ sound, heard }: DeviceFacts): Told {
  if (sound === 'not available')
    return { state: sound, words: 'This browser gives no sound. Keep the screen in view, or use another device too.' };
  if (sound === 'lost')
    return { state: sound, words: 'The device has stopped it, as for a call. Play the alarm again.' };
  if (heard?.answer === 'no')
    return {
      state: 'lost',
      words: `Not heard at the stove (${heard.day}). Turn the volume up, end silent mode, bring it nearer, and play it again.`,
    };
  if (sound === 'off') return { state: 'off', words: 'Off until it is tapped on: browsers give sound to a tap alone.' };
  return heard
    ? { state: 'tested', words: `Heard at the stove with the fan on (${heard.day}). Volume may have changed since.` }
    : { state: 'not tried', words: 'On. Whether it is loud enough, only you can tell: play it at the stove.' };
}

function vibrationOf({ canVibrate, vibration }: DeviceFacts): Told {
  if (!canVibrate) return { state: 'not available', words: 'This browser can’t. Rely on sound and screen.' };
  if (!vibration) return { state: 'off', words: 'Turned off.' };
  return {
    state: 'asked',
    words: 'With each alarm. Some devices take the call and do nothing: never rely on it.',
  };
}

function voiceOf({ voice }: DeviceFacts): Told {
  if (voice === 'not available')
    return { state: voice, words: 'This device has no voice, or it failed. Tones and screen say the same.' };
  if (voice === 'off') return { state: 'off', words: 'It can say what to do, beside the tones.' };
  return { state: 'asked', words: 'It says what to do, beside the tones. Try it.' };
}

function screenOf({ screen, secure }: DeviceFacts): Told {
  const instead = 'Set the screen timeout to 30 min or never, and plug the device in.';
  if (screen === 'asked') return { state: screen, words: `The device may still turn it off, as with a low battery.` };
  if (screen === 'off') return { state: 'off', words: instead };
  if (screen === 'lost')
    return { state: screen, words: `It is asked for again when the page is back in view. ${instead}` };
  return { state: screen, words: secure ? instead : `${plainHttp} ${instead}` };
}

function offlineOf({ offline, secure }: DeviceFacts): Told {
  if (offline === 'ready')
    return { state: 'tested', words: 'This page is kept on the device and opens without the network.' };
  if (offline === 'next load') return { state: 'not tried', words: 'It is being kept: load the page once more.' };
  const instead = 'Don’t close or reload this page in a cook: what is open goes on.';
  return { state: 'not available', words: secure ? instead : `${plainHttp} ${instead}` };
}

function entriesOf({ entries, lasting }: DeviceFacts): Told {
  if (entries === 'looking') return { state: 'not tried', words: 'Being tested.' };
  if (entries === 'failed')
    return {
      state: 'not available',
      words: 'Entries last as long as this page is open: write the main ones down too.',
    };
  const lastingWords = {
    yes: 'The browser keeps them when room is short.',
    no: 'The browser may drop them when room is short: save the cook to a file when it is done.',
    'not asked': 'The browser may drop them when room is short, unless it is asked not to.',
    'not available':
      'The browser may drop them when room is short and can’t be asked not to: save the cook to a file when it is done.',
  }[lasting];
  return { state: 'tested', words: `Written and read back. ${lastingWords}` };
}

const plainHttp =
  'Plain http in the home network has none of it. It is there with a certificate that the device trusts, or where Umberpan runs on this very device.';
