/** Tells alarms and new advice at the stove by sound, vibration and voice, and asks for the screen to be kept on. */
import { useEffect, useRef, useState } from 'react';
import type { Urgency } from '../../../../core/advice/advise.ts';
import { type AlarmId, alarmCatalogue } from '../../../../core/advice/alarms/catalogue.ts';
import type { Alarms } from '../../../../core/advice/alarms/engine.ts';
import { alarmSaying, saying } from './sayings.ts';
import { keepTelling, keptTelling, type TellingSettings } from './settings.ts';
import { type Tone, vibrationOf } from './tones.ts';
import { useMute } from './useMute.ts';
import { type ScreenState, useScreenOn } from './useScreenOn.ts';
import { type SoundState, useSound } from './useSound.ts';
import { useVoice, type VoiceState } from './useVoice.ts';
import { rankOfSaying } from './voice.ts';
import { isNewAdvice, newlySounded, stillUnseen } from './whatSounds.ts';

export interface ToTell {
  readonly alarms: Alarms;
  /** The same for as long as the same is advised. */
  readonly cardKey: string;
  readonly cardUrgency: Urgency;
  /** For the voice: the act first. */
  readonly cardWords: string;
  /** For the voice, after the act: `149 degrees.` */
  readonly numberWords?: string;
}

export interface Telling {
  readonly settings: TellingSettings;
  change(part: Partial<TellingSettings>): void;
  readonly sound: SoundState;
  readonly voice: VoiceState;
  readonly screen: ScreenState;
  /** From a tap. */
  turnSoundOn(): Promise<void>;
  /** The real alarm at full gain, muted or not; from a tap. */
  tryAlarm(): Promise<void>;
  trySaying(): void;
  tryVibration(): void;
  /** 0: nothing is muted. */
  readonly mutedForS: number;
  mute(): void;
  unmute(): void;
}

export function useTelling({ alarms, cardKey, cardUrgency, cardWords, numberWords }: ToTell): Telling {
  const [settings, setSettings] = useState(keptTelling);
  const sound = useSound(settings.sound);
  const voice = useVoice(settings.voice);
  const screen = useScreenOn(settings.screen);
  const mute = useMute(() => tellAlarms(stillUnseen(alarms.states)));

  const change = (part: Partial<TellingSettings>) => {
    const changed = { ...settings, ...part };
    keepTelling(changed);
    setSettings(changed);
  };
  const give = (tone: Tone) => {
    sound.play(tone);
    if (settings.vibration) vibrate(tone);
  };
  const tellAlarms = ([id]: readonly AlarmId[]) => {
    if (!id) return;
    const { sound: tone, priority } = alarmCatalogue[id];
    give(tone);
    voice.say(alarmSaying(id, numberWords), rankOfSaying[priority]);
  };
  const tellAdvice = () => {
    voice.say(saying(cardWords, numberWords), rankOfSaying[cardUrgency === 'act now' ? 'act now' : 'advice']);
  };

  const before = useRef<Alarms['states']>(undefined);
  const beforeKey = useRef<string>(undefined);
  // biome-ignore lint/correctness/useExhaustiveDependencies: it tells when alarms or card are others, by the settings of that moment
  useEffect(() => {
    const sounded = newlySounded(before.current, alarms);
    const advised = isNewAdvice(beforeKey.current, cardKey, cardUrgency);
    before.current = alarms.states;
    beforeKey.current = cardKey;
    if (mute.isMuted()) return;
    tellAlarms(sounded);
    if (advised && sounded.length === 0 && settings.prompts) give('prompt');
    if (advised) tellAdvice();
  }, [alarms, cardKey, cardUrgency]);

  const turnSoundOn = async () => {
    change({ sound: true });
    await sound.turnOn();
  };
  return {
    settings,
    change,
    sound: sound.state,
    voice: voice.state,
    screen,
    turnSoundOn,
    async tryAlarm() {
      if (sound.state !== 'on') await turnSoundOn();
      sound.play('threeAndTwo');
    },
    trySaying: () => voice.say('This is the voice. 120 degrees.', rankOfSaying.advice),
    tryVibration: () => vibrate('threeAndTwo'),
    mutedForS: mute.mutedForS,
    mute() {
      voice.hush();
      mute.mute();
    },
    unmute: mute.unmute,
  };
}

/** Asked for, and never known to have happened: some browsers take the call and do nothing, and all want a tap on the page first. */
function vibrate(tone: Tone): void {
  if ('vibrate' in navigator && navigator.userActivation?.hasBeenActive !== false) navigator.vibrate(vibrationOf(tone));
}
