/**
 * What sounds, as pulses: alarms by the grouped patterns of IEC 60601-1-8 (3 + 2, 3, 1; its timings from memory), and two soft tones for advice.
 * No pattern is a continuous tone, and none lasts three seconds (WCAG 2.2, 1.4.2).
 */
import type { SoundPattern } from '../../../../core/advice/alarms/catalogue.ts';

export type Tone = SoundPattern | 'prompt';

export interface Pulse {
  readonly atS: number;
  readonly forS: number;
  readonly hz: number;
}

/** Its harmonics up to the fifth, 2935 Hz, stay below 3 kHz: they carry through a fan, and to ears that miss high tones. */
const alarmHz = 587;
/** Strength of the fundamental and of its harmonics. */
export const harmonics: readonly number[] = [0, 1, 0.6, 0.5, 0.4, 0.3];
/** Share of full scale. How loud that is at the stove, only a person there can tell. */
export const levels: Readonly<Record<Tone, number>> = { threeAndTwo: 1, three: 0.7, one: 0.5, prompt: 0.15 };

const threeAndTwo = [0, 0.22, 0.44, 0.84, 1.06];
const again = 1.6;

const alarm = (startsS: readonly number[], forS: number): readonly Pulse[] =>
  startsS.map((atS) => ({ atS, forS, hz: alarmHz }));

export const tones: Readonly<Record<Tone, readonly Pulse[]>> = {
  threeAndTwo: alarm([...threeAndTwo, ...threeAndTwo.map((atS) => atS + again)], 0.14),
  three: alarm([0, 0.4, 0.8], 0.2),
  one: alarm([0], 0.25),
  prompt: [
    { atS: 0, forS: 0.18, hz: 523 },
    { atS: 0.26, forS: 0.18, hz: 659 },
  ],
};

/** The same pattern for `navigator.vibrate`: shaking and resting in turn, ms. */
export function vibrationOf(tone: Tone): number[] {
  return tones[tone].flatMap(({ atS, forS }, i, pulses) => {
    const next = pulses[i + 1];
    const shake = Math.round(forS * 1000);
    return next ? [shake, Math.round((next.atS - atS - forS) * 1000)] : [shake];
  });
}
