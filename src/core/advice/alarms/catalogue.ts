/**
 * Every alarm: a thing that needs an act in time (ISA-18.2's definition). What needs none is a prompt or a note, and not here.
 * Times and dead bands are first values of our own, by the practice of alarm management (ISA-18.2, EEMUA 191; as told in tutorials).
 */
import type { StepKind } from '../../pan/steps.ts';

export type Priority = 'act now' | 'act soon' | 'keep in mind';

export interface AlarmKind {
  readonly title: string;
  readonly condition: string;
  readonly consequence: string;
  /** What the cook does. */
  readonly action: string;
  readonly respondWithinS: number;
  readonly priority: Priority;
  /** How long the condition must hold, and must be gone, before the alarm comes and goes, s. */
  readonly onDelayS: number;
  readonly offDelayS: number;
  /** Steps in which it sounds; in others it is followed in silence. */
  readonly steps: readonly StepKind[];
  /** Alarms that name the cause of this one: while one of them is on, this one is silent. */
  readonly causedBy: readonly string[];
}

const hot: readonly StepKind[] = ['dissolve', 'climb', 'invert', 'brown', 'roast', 'cast', 'letDown'];
const holds: readonly StepKind[] = ['invert', 'brown', 'roast'];

export const alarmCatalogue = {
  scorch: {
    title: 'Near scorching',
    condition: 'more likely than not above the roast limit within the lead time',
    consequence: 'the sugar smokes, burns bitter, and may catch fire',
    action: 'Off the heat now. No water.',
    respondWithinS: 60,
    priority: 'act now',
    onDelayS: 0,
    offDelayS: 20,
    steps: hot,
    causedBy: [],
  },
  foam: {
    title: 'Foam rising',
    condition: 'the cook says so',
    consequence: 'hot syrup over the rim, onto ring and hands',
    action: 'Off the heat, stir, add nothing.',
    respondWithinS: 15,
    priority: 'act now',
    onDelayS: 0,
    offDelayS: 10,
    steps: hot,
    causedBy: [],
  },
  unattended: {
    title: 'Nobody at the stove?',
    condition: 'no deed and no answer for ten minutes with the heat on, and none in the minute after the question',
    consequence: 'an unattended pan is the commonest start of a kitchen fire',
    action: 'Turn the heat off.',
    respondWithinS: 60,
    priority: 'act now',
    onDelayS: 0,
    offDelayS: 0,
    steps: hot,
    causedBy: [],
  },
  probeLost: {
    title: 'Thermometer lost',
    condition: 'no reading for three of its intervals with the heat on',
    consequence: 'nobody knows how hot the syrup is',
    action: 'Check the probe, read by hand, lower the heat.',
    respondWithinS: 60,
    priority: 'act soon',
    onDelayS: 0,
    offDelayS: 10,
    steps: hot,
    causedBy: [],
  },
  probeDoubtful: {
    title: 'Thermometer doubtful',
    condition: 'three readings in a row far from what the pan can do',
    consequence: 'advice would follow a wrong number',
    action: 'Compare with a second thermometer; is the tip in the syrup?',
    respondWithinS: 120,
    priority: 'act soon',
    onDelayS: 0,
    offDelayS: 30,
    steps: hot,
    causedBy: ['probeLost'],
  },
  aboveBand: {
    title: 'Too hot for this step',
    condition: 'above the band, by the twin',
    consequence: 'browning or roasting faster than planned',
    action: 'A spoonful of cold water, or turn down.',
    respondWithinS: 120,
    priority: 'act soon',
    onDelayS: 30,
    offDelayS: 15,
    steps: holds,
    causedBy: ['scorch', 'probeLost', 'probeDoubtful'],
  },
  belowBand: {
    title: 'Too cold for this step',
    condition: 'below the band after having been in it, by the twin',
    consequence: 'the hold takes longer; nothing is spoilt',
    action: 'Turn up.',
    respondWithinS: 300,
    priority: 'keep in mind',
    onDelayS: 60,
    offDelayS: 15,
    steps: holds,
    causedBy: ['probeLost', 'probeDoubtful'],
  },
} as const satisfies Record<string, AlarmKind>;

export type AlarmId = keyof typeof alarmCatalogue;
export const alarmIds = Object.keys(alarmCatalogue) as AlarmId[];
