/** What the events of a cook say, kind by kind. Quantities are SI-based with the unit in the name; what is missing is null. */
import type { Kit } from '../pan/kit.ts';
import type { AlkaliPart, Charge, Step } from '../pan/steps.ts';

/** The cook's first event: everything that the cook goes by, so that its log can be understood without anything else. */
export interface Begun {
  readonly mode: 'live' | 'rehearsal';
  /** What the simulated pan of a rehearsal was drawn from, how many times faster than a clock it runs, and whether its thermometer fails. */
  readonly rehearsal: { readonly seed: number; readonly speed: number; readonly surprises?: boolean } | null;
  readonly planId: string | null;
  /** The plan request as it was made; kept whole and not read here. */
  readonly request: object;
  readonly amounts: { readonly charge: Charge; readonly alkali: AlkaliUsed | null };
  readonly steps: readonly Step[];
  readonly kit: Kit;
}

/** The alkali as weighed and mixed. */
export interface AlkaliUsed {
  readonly substance: AlkaliPart['substance'];
  /** Alkali to weigh, kg as it comes, and the pure alkali in it. */
  readonly weighedKg: number;
  readonly pureKg: number;
  /** Cold water to dissolve or slurry it in, kg. */
  readonly waterKg: number;
  /** Pure alkali in the mixture, mass fraction. */
  readonly strength: number;
  readonly parts: readonly AlkaliPart[];
  readonly equivalents: number;
}

export const readingQualities = ['fresh', 'late', 'doubtful', 'lost', 'byHand', 'guessed'] as const;
export type ReadingQuality = (typeof readingQualities)[number];

/** UCUM codes that a thermometer may declare. */
export const readingUnits = ['Cel', '[degF]', 'K'] as const;
export type ReadingUnit = (typeof readingUnits)[number];

export interface Reading {
  /** Which thermometer. */
  readonly probe: string;
  /** Null when there is none: then `quality` is lost or doubtful. */
  readonly valueC: number | null;
  readonly quality: ReadingQuality;
  /** As received: the unit that the source declared, and the number or the text that it sent. */
  readonly unit: ReadingUnit;
  readonly raw: number | string | null;
}

export interface HeatSet {
  readonly notch: number;
}

export interface WaterAdded {
  readonly waterKg: number;
  /** How many spoonfuls that was; 0 for a measured amount. */
  readonly spoonfuls: number;
  readonly spoon: string | null;
}

export interface AlkaliAdded extends AlkaliPart {
  /** Number of the part, from 1. */
  readonly part: number;
}

export const dropBehaviours = ['runs', 'threads', 'bends', 'snaps', 'shatters'] as const;
export type DropBehaviour = (typeof dropBehaviours)[number];

export interface SpoonTest {
  /** Colour chosen from the swatches: A430 per cm of a 10 % w/w solution. */
  readonly a430: number | null;
  readonly behaviour: DropBehaviour | null;
  readonly taste: readonly string[];
}

export interface EventBodies {
  readonly begun: Begun;
  readonly reading: Reading;
  readonly heat: HeatSet;
  readonly water: WaterAdded;
  readonly alkali: AlkaliAdded;
  readonly stir: Readonly<Record<never, never>>;
  readonly spoonTest: SpoonTest;
  readonly note: { readonly text: string };
  /** A reference; the picture itself is kept elsewhere. */
  readonly photo: { readonly reference: string };
  /** The step of this index in the plan has begun. */
  readonly step: { readonly index: number };
  readonly poured: Readonly<Record<never, never>>;
  /** Pan and contents together, and the pan alone. */
  readonly weight: { readonly grossKg: number; readonly tareKg: number };
  readonly dilutionPh: { readonly ph: number; readonly syrupKg: number; readonly waterKg: number };
  readonly dilutionBrix: {
    readonly brix: number;
    readonly syrupKg: number;
    readonly waterKg: number;
    readonly temperatureC: number;
  };
  /** Foam rises, or is quiet again. */
  readonly foam: { readonly rising: boolean };
  /** The cook was asked whether anybody is at the stove, and is. */
  readonly here: Readonly<Record<never, never>>;
  /** The cook has compared a thermometer whose readings seemed strange, and stands by it. */
  readonly vouched: { readonly probe: string };
  /** What a thermometer really shows, whatever it declares: from a reading of its own on, or from now on (null). */
  readonly probeUnit: { readonly probe: string; readonly unit: ReadingUnit; readonly from: string | null };
  /** An alarm was seen. */
  readonly seen: { readonly alarm: string };
  /** An alarm was put aside for a while. */
  readonly putAside: { readonly alarm: string; readonly forS: number; readonly reason: string };
  /** The wall clock and the monotonic clock of a device went apart: what each says has passed since they were last compared. */
  readonly clock: { readonly wallMs: number; readonly monoMs: number };
  readonly correction: Correction;
  readonly ended: { readonly how: 'done' | 'abandoned' };
}

export type EventKind = keyof EventBodies;

/** What may get another body. How a cook began stays as it was; a correction can only be taken back. */
export type CorrectableKind = Exclude<EventKind, 'begun' | 'correction'>;

/** What was written before said something else, or never happened (null). `kind` repeats that of the event corrected. */
export type Correction =
  | {
      [K in CorrectableKind]: { readonly corrects: string; readonly kind: K; readonly body: EventBodies[K] | null };
    }[CorrectableKind]
  | { readonly corrects: string; readonly kind: 'correction'; readonly body: null };
