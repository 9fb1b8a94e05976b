/** A rehearsal: a pan with hidden properties, and a cook on it whose log, twin, advice and alarms are those of any other cook. */
import type { Begun, EventBodies, EventKind } from '../log/bodies.ts';
import { deedBody } from '../log/deedBody.ts';
import type { KnownEvent } from '../log/event.ts';
import { makeEvent } from '../log/makeEvent.ts';
import { readingAsReceived } from '../log/readingAsReceived.ts';
import { createHiddenPan, type HiddenPan } from '../pan/hiddenPan.ts';
import type { PreparedKit } from '../pan/preparedKit.ts';
import type { Deed, Step, TimedDeed } from '../pan/steps.ts';
import { normalNumbers } from '../reactions/normal.ts';
import type { Twin } from '../twin/twin.ts';
import type { Advice } from './advise.ts';
import { createLiveCook, type LiveCook } from './liveCook.ts';
import type { Horizon } from './outlook.ts';
import type { Progress } from './progress.ts';
import { createSurprises, drawSurprises, type Surprised } from './surprises.ts';

export interface RehearsalOptions {
  readonly prepared: PreparedKit;
  /** How the cook begins; its seed decides what is hidden, and every noise: the same seed is the same rehearsal. */
  readonly begun: Begun;
  readonly members?: number;
  /** What the thermometer sends of what it shows at a time, instead of what `begun` asks for; null: nothing. */
  readonly sends?: (shownC: number, timeS: number) => number | null;
}

export interface Rehearsal {
  readonly timeS: number;
  readonly cook: LiveCook;
  readonly progress: Progress;
  readonly twin: Twin;
  /** The hidden pan; to be shown when all is over. */
  readonly hidden: HiddenPan;
  /** Last reading of the thermometer, C. */
  readonly readingC: number;
  /** The log: all that was read, done and said, in order. */
  readonly events: readonly KnownEvent[];
  /** All that was done to the pan, in order. */
  readonly deeds: readonly TimedDeed[];
  /** Readings taken in holds, from when the band was first reached, and how many found the hidden pan inside it. */
  readonly holds: { readonly looks: number; readonly inBand: number };
  /** Faults of the thermometer that came so far; undefined where it was begun without surprises. */
  readonly surprises: readonly Surprised[] | undefined;
  /** Goes on to a time; the thermometer is read each `readEveryS` on the way. */
  moveTo(timeS: number): void;
  perform(deed: Deed): void;
  /** What the cook says and does beside the pan: spoon tests, answers, alarms seen, notes. */
  say<K extends EventKind>(kind: K, body: EventBodies[K]): void;
  advice(horizon?: Horizon): Advice;
}

/** The thermometer of a rehearsal is read this often, s. */
export const readEveryS = 10;

/** Names of the simulated device, and of its cook by the seed. */
const device = '00000000-0000-7000-8000-000000000001';

export function createRehearsal(options: RehearsalOptions): Rehearsal {
  const { prepared, begun, members } = options;
  const { steps, amounts, rehearsal } = begun;
  const { charge } = amounts;
  const seed = rehearsal?.seed ?? 1;
  const hidden = createHiddenPan(prepared, charge, normalNumbers(2 * seed));
  const cook = createLiveCook({ prepared, charge, steps, seed, ...(members === undefined ? {} : { members }) });
  const { followed } = cook;
  const surprises = rehearsal?.surprises
    ? createSurprises(drawSurprises(seed, steps), {
        steps,
        roomC: prepared.kit.roomC,
        progress: () => followed.progress,
      })
    : undefined;
  const { sends = surprises?.sends ?? ((shownC) => shownC) } = options;
  const events: KnownEvent[] = [];
  const deeds: TimedDeed[] = [];
  let readingC = hidden.reading();
  let holds = { looks: 0, inBand: 0 };
  say('begun', begun);

  function say<K extends EventKind>(kind: K, body: EventBodies[K]): void {
    const tMono = Math.round(1000 * hidden.timeS);
    const deviceSeq = events.length + 1;
    const making = {
      ...{ cook: `rehearsal-${seed}`, device, bootId: device, deviceSeq, tMono, wallMs: tMono },
      ...{ clockOffsetMs: 0, clockErrMs: 0, tz: 'UTC', random: numbered(deviceSeq) },
    };
    events.push(makeEvent(making, kind, body) as KnownEvent);
    cook.hear(events);
    surprises?.hear(kind, body, hidden.timeS);
  }

  function read(timeS: number): void {
    hidden.moveTo(timeS);
    readingC = hidden.reading();
    const sent = sends(readingC, timeS);
    if (sent !== null) say('reading', readingAsReceived('simulated', Math.round(sent * 100) / 100, 'Cel'));
    cook.moveTo(timeS);
    const { progress } = followed;
    const step = steps[progress.stepIndex];
    if (!progress.poured && holding(progress, step)) {
      const inBand = hidden.temperatureC >= step.bandC[0] && hidden.temperatureC <= step.bandC[1];
      holds = { looks: holds.looks + 1, inBand: holds.inBand + (inBand ? 1 : 0) };
    }
  }

  return {
    get timeS() {
      return hidden.timeS;
    },
    cook,
    get progress() {
      return followed.progress;
    },
    twin: followed.twin,
    hidden,
    get readingC() {
      return readingC;
    },
    events,
    deeds,
    get holds() {
      return holds;
    },
    get surprises() {
      return surprises?.came;
    },
    moveTo(toS) {
      const first = (Math.floor(hidden.timeS / readEveryS) + 1) * readEveryS;
      for (let t = first; t <= toS; t += readEveryS) read(t);
      hidden.moveTo(toS);
    },
    perform(deed) {
      const { timeS } = hidden;
      hidden.perform(deed);
      deeds.push({ timeS, deed });
      const { kind, body } = deedBody(deed, followed.progress.partsGiven);
      say(kind, body);
    },
    say,
    advice: cook.advice,
  };
}

/** Ten bytes that count: a simulated device needs no luck. */
function numbered(n: number): Uint8Array {
  const bytes = new Uint8Array(10);
  new DataView(bytes.buffer).setUint32(6, n);
  return bytes;
}

function holding({ inBandSinceS }: Progress, { end, letDown }: Step): boolean {
  return inBandSinceS !== undefined && 'heldMinutes' in end && !letDown;
}

export interface Following {
  /** From the advice to the act, s. */
  readonly reactionS: number;
  readonly longestS: number;
  readonly horizon?: Horizon;
}

/** Does what is advised a while after it is said, as a person would, until the pour or `longestS`; yields each piece of advice. */
export function* advised(
  rehearsal: Rehearsal,
  steps: readonly Step[],
  { reactionS, longestS, horizon }: Following,
): Generator<Advice, void, void> {
  rehearsal.perform({ kind: 'heat', notch: steps[0].approachNotch });
  let pending: { readonly atS: number; readonly deeds: readonly Deed[] } | undefined;
  while (!rehearsal.progress.poured && rehearsal.timeS < longestS) {
    const next = rehearsal.timeS + readEveryS / 2;
    rehearsal.moveTo(next);
    if (pending && next >= pending.atS) {
      for (const deed of pending.deeds) rehearsal.perform(deed);
      pending = undefined;
    }
    if (pending || rehearsal.progress.poured || next % readEveryS !== 0) continue;
    const advice = rehearsal.advice(horizon);
    yield advice;
    if (advice.deeds.length > 0) pending = { atS: next + reactionS, deeds: advice.deeds };
  }
}

/** The same to its end; `onLook` is told each piece of advice. */
export function followAdvice(
  rehearsal: Rehearsal,
  steps: readonly Step[],
  following: Following,
  onLook: (rehearsal: Rehearsal, advice: Advice) => void = () => undefined,
): void {
  for (const advice of advised(rehearsal, steps, following)) onLook(rehearsal, advice);
}
