/** What may befall the thermometer of a rehearsal, and the alarm that should say so. */
import type { AlarmId } from './alarms/catalogue.ts';

/** When a fault began: how long ago, what the thermometer showed then, and the air that a tip outside the syrup is in. */
export interface Since {
  readonly sinceS: number;
  readonly firstC: number;
  readonly roomC: number;
}

export interface SurpriseKind {
  /** What befell, to follow a time. */
  readonly words: string;
  readonly alarm: AlarmId;
  /** What is sent of what is shown, C; null: nothing. */
  readonly sends: (shownC: number, since: Since) => number | null;
}

/** A tip in the air comes to the room's temperature with this time constant, s (assumed). */
const coolingS = 20;

/** Not among them: one that sticks or slowly drifts. In a hold, which is steady itself, no single thermometer gives that away in time. */
export const surpriseKinds = {
  silent: { words: 'the thermometer sent nothing', alarm: 'probeLost', sends: () => null },
  otherUnit: {
    words: 'the thermometer was switched to Fahrenheit',
    alarm: 'unitMixUp',
    sends: (shownC) => 1.8 * shownC + 32,
  },
  fallenOut: {
    words: 'the tip fell out of the syrup',
    alarm: 'probeDoubtful',
    sends: (_, { sinceS, firstC, roomC }) => roomC + (firstC - roomC) * Math.exp(-sinceS / coolingS),
  },
  inSteam: {
    words: 'the tip hung in the steam',
    alarm: 'probeDoubtful',
    sends: (shownC) => Math.min(shownC, 100),
  },
  onBottom: {
    words: 'the tip lay on the hot bottom',
    alarm: 'probeDoubtful',
    sends: (shownC) => shownC + 12,
  },
} as const satisfies Readonly<Record<string, SurpriseKind>>;

export type SurpriseName = keyof typeof surpriseKinds;
export const surpriseNames = Object.keys(surpriseKinds) as readonly SurpriseName[];
