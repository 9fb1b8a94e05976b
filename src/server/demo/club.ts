/**
 * The demo, as data: the Damson Row allotment club, which brews in a church-hall kitchen. The club and all that it did are invented;
 * the logs of its cooks are simulated when the demo is put in.
 */
import type { WhenAdded } from '../../core/beer/glass.ts';
import type { Strengths, Texture } from '../../core/lot/taste.ts';
import { descriptors } from '../../core/lot/taste.ts';
import { defaultKit, type Kit } from '../../core/pan/kit.ts';
import { defaultRequest, type PlanRequest } from '../../core/planning/request.ts';

export const dayMs = 86_400_000;

/** Records of the demo are known by their ids (UUIDs of version 8, RFC 9562, 5.8). */
const kinds = ['kit', 'plan', 'cook', 'lot', 'lot_note', 'glass', 'tasting'] as const;
export type DemoKind = (typeof kinds)[number];
export function demoId(kind: DemoKind, number: number): string {
  return `da350000-${kinds.indexOf(kind)}000-8000-8000-${String(number).padStart(12, '0')}`;
}
/** The beginning of every id of a kind. */
export const demoIdsOf = (kind: DemoKind): string => demoId(kind, 0).slice(0, 24);

/** For each kg or kWh, in the club's currency. */
export const prices = { sugar: 1.2, maltExtract: 11, alkali: 14, energy: 0.3, bought: 9.5 };

export const kits: readonly Kit[] = [
  {
    ...defaultKit,
    name: 'Church hall, small gas ring',
    stove: { kind: 'gas', ratedPowerW: 2600, notches: 6 },
    pan: { material: 'stainless', diameterM: 0.2, heightM: 0.13, massKg: 1.3 },
    water: { alkalinityMgPerL: 210 },
    altitudeM: 60,
    roomC: 18,
    prices,
  },
  {
    ...defaultKit,
    name: 'Plot 14 shed, induction plate',
    stove: { kind: 'induction', ratedPowerW: 2000, notches: 10 },
    pan: { material: 'stainless', diameterM: 0.18, heightM: 0.12, massKg: 1.1 },
    water: { alkalinityMgPerL: 15 },
    altitudeM: 60,
    roomC: 16,
    prices,
  },
];

interface DemoPlan {
  readonly kit: number;
  readonly request: PlanRequest;
}

export const plans: readonly DemoPlan[] = [
  { kit: 0, request: { ...defaultRequest, name: 'Bonfire night', alkaliGPerKg: 4, brownMinutes: 18 } },
  { kit: 0, request: { ...defaultRequest, name: 'Bonfire night, darker', alkaliGPerKg: 6, brownMinutes: 30 } },
  {
    kit: 1,
    request: {
      ...defaultRequest,
      name: 'Harvest supper',
      route: 'bright',
      form: 'syrup',
      massKg: 0.5,
      alkaliGPerKg: 2.5,
      brownMinutes: 15,
    },
  },
  { kit: 0, request: { ...defaultRequest, name: 'Marrow show', route: 'pale', form: 'syrup', massKg: 0.5 } },
];

interface DemoCook {
  readonly plan: number;
  readonly mode: 'live' | 'rehearsal';
  readonly seed: number;
  /** Before the day on which the demo is put in. */
  readonly daysAgo: number;
  readonly note?: { readonly atS: number; readonly text: string };
}

export const cooks: readonly DemoCook[] = [
  { plan: 0, mode: 'rehearsal', seed: 19, daysAgo: 101 },
  {
    plan: 0,
    mode: 'live',
    seed: 27,
    daysAgo: 100,
    note: { atS: 3600, text: 'Foam came to two fingers under the rim with the first part. The larger pan next time.' },
  },
  {
    plan: 1,
    mode: 'live',
    seed: 27,
    daysAgo: 79,
    note: { atS: 4200, text: 'Same hall, same pan; half as much lye again, and browned longer.' },
  },
  { plan: 2, mode: 'live', seed: 15, daysAgo: 58 },
  {
    plan: 3,
    mode: 'live',
    seed: 24,
    daysAgo: 30,
    note: { atS: 1500, text: 'Hall booked from eight: no time for more.' },
  },
];

export interface DemoLot {
  readonly cook: number;
  readonly name: string;
  /** What instruments and scale showed against the truth, as factors. */
  readonly absorbanceTimes: number;
  readonly brixTimes: number;
  readonly weightTimes: number;
  readonly tastes: readonly DemoTaste[];
  readonly taken: readonly { readonly kg: number; readonly why: string; readonly daysLater: number }[];
}

interface DemoTaste {
  readonly daysLater: number;
  readonly strengths: Strengths;
  readonly texture: Texture;
  readonly note: string;
  readonly blind: boolean;
}

/** In the order of the list of descriptors. */
function strengths(...given: readonly number[]): Strengths {
  return Object.fromEntries(descriptors.map((name, i) => [name, given[i] ?? null])) as unknown as Strengths;
}

export const lots: readonly DemoLot[] = [
  {
    cook: 1,
    name: 'Bonfire shards',
    absorbanceTimes: 1.03,
    brixTimes: 0.997,
    weightTimes: 0.985,
    tastes: [
      {
        daysLater: 2,
        strengths: strengths(3, 2, 4, 3, 1, 1, 0, 1, 1, 1, 4),
        texture: 'dry snap',
        note: 'Raisin first, then toffee.',
        blind: true,
      },
    ],
    taken: [{ kg: 0.25, why: 'Bonfire stout', daysLater: 5 }],
  },
  {
    cook: 2,
    name: 'Bonfire shards, darker',
    absorbanceTimes: 0.98,
    brixTimes: 1.002,
    weightTimes: 0.98,
    tastes: [
      {
        daysLater: 2,
        strengths: strengths(4, 2, 3, 2, 1, 2, 1, 2, 2, 1, 3),
        texture: 'hard, sticks to teeth',
        note: 'Darker fruit; burnt comes late and stays.',
        blind: true,
      },
    ],
    taken: [{ kg: 0.25, why: 'Plot 9 brown ale', daysLater: 6 }],
  },
  {
    cook: 3,
    name: 'Harvest syrup',
    absorbanceTimes: 1.05,
    brixTimes: 1.001,
    weightTimes: 0.99,
    tastes: [
      {
        daysLater: 1,
        strengths: strengths(2, 3, 2, 4, 1, 0, 0, 0, 0, 1, 5),
        texture: 'thick syrup',
        note: 'Honey and cherry.',
        blind: false,
      },
    ],
    taken: [{ kg: 0.3, why: 'Harvest bitter', daysLater: 7 }],
  },
  { cook: 4, name: 'Marrow syrup', absorbanceTimes: 1, brixTimes: 0.998, weightTimes: 0.99, tastes: [], taken: [] },
];

export interface DemoGlass {
  readonly name: string;
  readonly lot: number;
  readonly massKg: number;
  readonly added: WhenAdded;
  readonly volumeL: number;
  readonly gravity: number;
  readonly a430PerCm: number;
  /** None for one that is still to be brewed. */
  readonly bottledDaysAgo: number | null;
  readonly tastings: readonly DemoBeerTasting[];
}

export interface DemoBeerTasting {
  readonly weeks: number;
  readonly strengths: Strengths;
  readonly liking: number;
  readonly note: string;
}

export const glasses: readonly DemoGlass[] = [
  {
    name: 'Bonfire stout',
    lot: 0,
    massKg: 0.25,
    added: 'late',
    volumeL: 9,
    gravity: 1.05,
    a430PerCm: 1.8,
    bottledDaysAgo: 77,
    tastings: [
      {
        weeks: 3,
        strengths: strengths(2, 1, 3, 2, 1, 2, 2, 1, 2, 0, 1),
        liking: 6,
        note: 'Young. Toffee is in front.',
      },
      {
        weeks: 10,
        strengths: strengths(3, 2, 3, 2, 1, 2, 2, 1, 1, 0, 1),
        liking: 8,
        note: 'Rounded. Gone in an evening.',
      },
    ],
  },
  {
    name: 'Plot 9 brown ale',
    lot: 1,
    massKg: 0.25,
    added: 'kettle',
    volumeL: 10,
    gravity: 1.042,
    a430PerCm: 0.7,
    bottledDaysAgo: 56,
    tastings: [
      { weeks: 3, strengths: strengths(3, 1, 2, 2, 2, 1, 1, 2, 2, 1, 1), liking: 5, note: 'Burnt edge for some.' },
      { weeks: 7, strengths: strengths(4, 2, 2, 2, 2, 1, 1, 2, 1, 1, 1), liking: 6, note: 'Plums. Better warm.' },
    ],
  },
  {
    name: 'Harvest bitter',
    lot: 2,
    massKg: 0.3,
    added: 'fermenter',
    volumeL: 12,
    gravity: 1.038,
    a430PerCm: 0.35,
    bottledDaysAgo: 35,
    tastings: [
      {
        weeks: 4,
        strengths: strengths(1, 2, 1, 3, 1, 0, 0, 0, 1, 0, 1),
        liking: 7,
        note: 'Light, dry, a little cherry.',
      },
    ],
  },
  {
    name: 'Marrow show golden',
    lot: 3,
    massKg: 0.3,
    added: 'kettle',
    volumeL: 10,
    gravity: 1.046,
    a430PerCm: 0.25,
    bottledDaysAgo: null,
    tastings: [],
  },
];
