/**
 * Every alarm: a thing that needs an act in time (ISA-18.2's definition). What needs none is a prompt or a note, and not counted here.
 * Times and dead bands are first values of our own, after ISA-18.2 and EEMUA 191 as told in tutorials: a dead band of 1 % of a span of 200 K.
 */
import type { StepKind } from '../../pan/steps.ts';

export type Priority = 'act now' | 'act soon' | 'keep in mind';

/** Pulses of a sound, by urgency (the pattern of IEC 60601-1-8): never a continuous tone. */
export type SoundPattern = 'threeAndTwo' | 'three' | 'one';

export interface AlarmKind {
  readonly title: string;
  readonly condition: string;
  /** What usually brings it about. */
  readonly cause: string;
  readonly consequence: string;
  /** What the cook does. */
  readonly action: string;
  readonly respondWithinS: number;
  readonly priority: Priority;
  /** How far back inside its limit the temperature must come before the condition counts as gone, K; null: not judged by temperature. */
  readonly deadBandK: number | null;
  /** How long the condition must hold, and must be gone, before the alarm comes and goes, s. */
  readonly onDelayS: number;
  readonly offDelayS: number;
  /** Steps in which it sounds; in others it is followed and logged in silence. */
  readonly steps: readonly StepKind[];
  /** Unseen, it sounds again after the first of these, and from then on after the second, s; null: it sounds once. */
  readonly soundsAgainS: readonly [number, number] | null;
  readonly sound: SoundPattern;
  /** Alarms that name the cause of this one: while one of them is on, this one is silent and shown below it. */
  readonly causedBy: readonly string[];
}

const all: readonly StepKind[] = ['dissolve', 'climb', 'invert', 'brown', 'roast', 'cast', 'letDown'];
const holds: readonly StepKind[] = ['invert', 'brown', 'roast'];
const hottest: readonly StepKind[] = ['invert', 'brown', 'roast', 'cast'];

const actNow = { priority: 'act now', soundsAgainS: [30, 60], sound: 'threeAndTwo', causedBy: [] } as const;
const actSoon = { priority: 'act soon', soundsAgainS: null, sound: 'three' } as const;
const keepInMind = { priority: 'keep in mind', soundsAgainS: null, sound: 'one' } as const;

export const alarmCatalogue = {
  scorch: {
    ...actNow,
    title: 'Near scorching',
    condition: 'more likely than not above the roast limit within the lead time',
    cause: 'heat too high for what is left in the pan',
    consequence: 'the sugar smokes, burns bitter, and may catch fire',
    action: 'Off the heat now. No water.',
    respondWithinS: 60,
    deadBandK: 2,
    onDelayS: 3,
    offDelayS: 20,
    steps: all,
  },
  foam: {
    ...actNow,
    title: 'Foam rising',
    condition: 'the cook has said so, and not yet that it is quiet again',
    cause: 'a hard boil, or alkali or water given to hot syrup',
    consequence: 'hot syrup over the rim, onto ring and hands',
    action: 'Off the heat, stir, add nothing.',
    respondWithinS: 15,
    deadBandK: null,
    onDelayS: 0,
    offDelayS: 10,
    steps: all,
  },
  unattended: {
    ...actNow,
    title: 'Nobody at the stove?',
    condition:
      'no deed, answer or reading by hand for ten minutes with the heat on, and none in the minute after the question',
    cause: 'the cook was called away, or has gone to sleep',
    consequence: 'a pan left on the heat may catch fire',
    action: 'Turn the heat off.',
    respondWithinS: 60,
    deadBandK: null,
    onDelayS: 0,
    offDelayS: 0,
    steps: all,
  },
  probeLost: {
    ...actSoon,
    title: 'Thermometer lost',
    condition: 'no reading for three of its intervals (by hand: two) with the heat on',
    cause: 'a loose plug, a flat battery, a lost link',
    consequence: 'nobody knows how hot the syrup is',
    action: 'Check the probe, read by hand, lower the heat.',
    respondWithinS: 60,
    deadBandK: null,
    onDelayS: 0,
    offDelayS: 10,
    steps: all,
    causedBy: [],
  },
  unitMixUp: {
    ...actSoon,
    title: 'Fahrenheit or Celsius?',
    condition: 'the reading is more than a hundred times likelier in the other unit',
    cause: 'the thermometer was switched, or its unit wrongly declared',
    consequence: 'its readings are set aside, and the pan is followed without them',
    action: 'Say which unit the thermometer shows.',
    respondWithinS: 120,
    deadBandK: null,
    onDelayS: 12,
    offDelayS: 10,
    steps: all,
    causedBy: [],
  },
  probesApart: {
    ...actSoon,
    title: 'Two thermometers disagree',
    condition: 'two thermometers more than 2 K apart for a minute',
    cause: 'one of them drifts, or its tip is out of the syrup or on the bottom',
    consequence: 'what is believed lies between the two, and may be neither',
    action: 'Look at both tips. Say which one is right.',
    respondWithinS: 120,
    deadBandK: null,
    onDelayS: 60,
    offDelayS: 15,
    steps: all,
    causedBy: ['unitMixUp'],
  },
  probeDoubtful: {
    ...actSoon,
    title: 'Thermometer doubtful',
    condition: 'three readings in a row far from what the pan can do',
    cause: 'the tip is out of the syrup or on the bottom, or the probe fails',
    consequence: 'advice would follow a wrong number',
    action: 'Is the tip in the syrup? Compare with a second thermometer.',
    respondWithinS: 120,
    deadBandK: null,
    onDelayS: 0,
    offDelayS: 30,
    steps: all,
    causedBy: ['probeLost', 'unitMixUp', 'probesApart'],
  },
  aboveBand: {
    ...actSoon,
    title: 'Too hot for this step',
    condition: 'above the band for half a minute, by the twin',
    cause: 'heat too high, or water boiled off',
    consequence: 'it goes faster than planned, and may go too far',
    action: 'Turn down, or cool as advised.',
    respondWithinS: 120,
    deadBandK: 2,
    onDelayS: 30,
    offDelayS: 15,
    steps: holds,
    causedBy: ['scorch', 'foam', 'probeLost', 'unitMixUp', 'probesApart', 'probeDoubtful'],
  },
  belowBand: {
    ...keepInMind,
    title: 'Too cold for this step',
    condition: 'below the band for half a minute after having been in it, by the twin',
    cause: 'heat too low, or too much water at once',
    consequence: 'the hold takes longer; nothing is spoilt',
    action: 'Turn up.',
    respondWithinS: 300,
    deadBandK: 2,
    onDelayS: 30,
    offDelayS: 15,
    steps: holds,
    causedBy: ['foam', 'probeLost', 'unitMixUp', 'probesApart', 'probeDoubtful'],
  },
  castClosing: {
    ...actSoon,
    title: 'Ready, and not for long',
    condition: 'ready to pour, and more likely than not out of the last band within two minutes',
    cause: 'the pan goes on heating or cooling while it waits',
    consequence: 'darker and more bitter than wanted, or too stiff to pour',
    action: 'Pour now, or take it off the heat.',
    respondWithinS: 120,
    deadBandK: null,
    onDelayS: 30,
    offDelayS: 15,
    steps: hottest,
    causedBy: ['scorch'],
  },
  storageTrouble: {
    ...actSoon,
    title: 'Little room to record',
    condition: 'less than 50 MB free, or writing failed',
    cause: 'the disk is full or failing',
    consequence: 'what is logged from now on may be lost with the next power cut',
    action: 'Make room; the cook goes on in memory.',
    respondWithinS: 600,
    deadBandK: null,
    onDelayS: 5,
    offDelayS: 30,
    steps: all,
    causedBy: [],
  },
} as const satisfies Record<string, AlarmKind>;

export type AlarmId = keyof typeof alarmCatalogue;
export const alarmIds = Object.keys(alarmCatalogue) as AlarmId[];
