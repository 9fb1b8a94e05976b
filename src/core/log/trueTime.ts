/**
 * When events really happened. Within one run of a device's monotonic clock, that clock says how far apart they are, and the
 * offsets measured in the run say where the run lies; the wall clock alone is believed only where nothing else is known.
 * So a device whose wall clock is wrong or jumps changes no duration and no order.
 */
import type { Clocked } from './event.ts';
import { grouped } from './grouped.ts';
import { instantMs } from './instant.ts';

/** Offsets that are off by no more than this beyond the best one count alike, ms. */
const alikeMs = 50;

/** One run of a monotonic clock: its events in order, and the true time of the clock's origin, ms. */
interface Run<E> {
  readonly events: readonly E[];
  readonly measured: boolean;
  originMs: number;
}

/** True time of each event on the server's clock, in whole ms since 1970; whatever order they come in. */
export function trueTimes<E extends Clocked & { readonly id: string }>(events: readonly E[]): Map<E, number> {
  const times = new Map<E, number>();
  for (const own of grouped(events, ({ device }) => device).values()) {
    own.sort((a, b) => a.deviceSeq - b.deviceSeq || (a.id < b.id ? -1 : 1));
    const runs = placedRuns(own);
    let latest = Number.NEGATIVE_INFINITY;
    for (const event of own) {
      const run = runs.get(event.bootId) as Run<E>;
      // What a device counted later happened later, whatever an uncertain origin says.
      latest = Math.max(latest, Math.round(run.originMs + event.tMono));
      times.set(event, latest);
    }
  }
  return times;
}

/** The runs of one device, by boot id. */
function placedRuns<E extends Clocked>(own: readonly E[]): Map<string, Run<E>> {
  const offsets = own.flatMap(({ clockOffsetMs }) => clockOffsetMs ?? []);
  const usualOffsetMs = offsets.length > 0 ? median(offsets) : 0;
  const byBoot = grouped(own, ({ bootId }) => bootId);
  const runs = [...byBoot.values()].map((events) => runOf(events, usualOffsetMs));
  for (const [place, run] of runs.entries()) if (!run.measured) moveBetween(run, runs[place - 1], runs[place + 1]);
  return new Map(runs.map((run) => [run.events[0].bootId, run]));
}

/** The median, so that a few offsets from before a jump of the wall clock do not count. */
function runOf<E extends Clocked>(events: readonly E[], usualOffsetMs: number): Run<E> {
  const origin = (event: E, offsetMs: number) => instantMs(event.tDevice) + offsetMs - event.tMono;
  const errors = events.flatMap(({ clockOffsetMs, clockErrMs }) => (clockOffsetMs === null ? [] : (clockErrMs ?? 0)));
  const best = errors.reduce((least, error) => Math.min(least, error), Number.POSITIVE_INFINITY);
  const origins = events.flatMap((event) =>
    event.clockOffsetMs !== null && (event.clockErrMs ?? 0) <= 2 * best + alikeMs
      ? origin(event, event.clockOffsetMs)
      : [],
  );
  const measured = origins.length > 0;
  return { events, measured, originMs: median(measured ? origins : events.map((e) => origin(e, usualOffsetMs))) };
}

/** Moves a run whose place was never measured between its neighbours, if it lies elsewhere. */
function moveBetween<E extends Clocked>(run: Run<E>, before: Run<E> | undefined, after: Run<E> | undefined): void {
  const first = run.events[0].tMono;
  const last = (run.events.at(-1) as E).tMono;
  if (after?.measured) run.originMs = Math.min(run.originMs, after.originMs + after.events[0].tMono - last);
  if (before) run.originMs = Math.max(run.originMs, before.originMs + (before.events.at(-1) as E).tMono - first);
}

/** Lower median. */
function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[(values.length - 1) >> 1];
}
