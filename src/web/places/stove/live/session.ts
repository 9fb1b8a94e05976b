/** The real cook that this page follows. It outlives the view of it: alarms go on while something is looked up elsewhere. */
import { proxy, wrap } from 'comlink';
import type { DeviceSigns } from '../../../../core/advice/alarms/signs.ts';
import type { Begun } from '../../../../core/log/bodies.ts';
import { deedBody } from '../../../../core/log/deedBody.ts';
import { cookUnderWay } from '../../../parts/cookUnderWay.ts';
import { heldValue } from '../../../parts/heldValue.ts';
import { type CookLog, WrittenElsewhere } from '../../../records/cookLog/cookLog.ts';
import type { Link } from '../../../records/cookLog/link.ts';
import { openCookLog } from '../../../records/cookLog/openCookLog.ts';
import { saveLog } from '../../../records/saveLog.ts';
import type { Acts } from '../acts.ts';
import { type Cooked, grown } from '../cooked.ts';
import type { Planned } from '../planned.ts';
import type { Stove } from '../stove.worker.ts';
import type { Told } from '../view.ts';

export interface Live {
  readonly id: string;
  readonly link: Link | undefined;
  /** How long ago the cook was opened here, s. */
  readonly openForS: number;
  readonly writer: 'here' | 'elsewhere';
  /** None until the cook's beginning is known here. */
  readonly cooked: Cooked | undefined;
  readonly ended: boolean;
  readonly failed: string | undefined;
}

const tickMs = 1000;
const roomEveryMs = 60_000;

const worker = wrap<Stove>(new Worker(new URL('../stove.worker.ts', import.meta.url), { type: 'module' }));
const held = heldValue<Live | undefined>(undefined);
export const { subscribe, now: liveNow } = held;
let log: CookLog | undefined;
let planned: Planned | undefined;
let turn = 0;
/** Events that the worker has been told, as they were then. */
let toldEvents = new WeakSet<object>();
let busy = false;
let openedAt = 0;
let freeBytes: number | null = null;
let roomAtMs = Number.NEGATIVE_INFINITY;

function become(change: Partial<Live>): void {
  const live = liveNow();
  if (live) held.become({ ...live, ...change });
}

void worker.onTold(
  proxy((told: Told) => {
    const live = liveNow();
    if (told.turn !== turn || !planned || !live) return;
    become({ cooked: grown(planned, live.cooked, told) });
    cookUnderWay.set({ id: live.id, name: planned.name, over: live.ended });
  }),
);

/** Opens a cook, unless it is open. */
export async function openLive(id: string): Promise<void> {
  if (liveNow()?.id === id) return;
  const mine = attend(id);
  const opened = await openCookLog(id);
  if (mine === turn) listen(opened);
  else opened.close();
}

/** Goes on with the log of a cook that has just begun. */
export function pickUp(begun: CookLog): void {
  attend(begun.cook);
  listen(begun);
}

function attend(id: string): number {
  log?.close();
  log = undefined;
  planned = undefined;
  toldEvents = new WeakSet();
  openedAt = performance.now();
  const fresh = {
    link: undefined,
    openForS: 0,
    writer: 'here',
    cooked: undefined,
    ended: false,
    failed: undefined,
  } as const;
  held.become({ id, ...fresh });
  return ++turn;
}

function listen(opened: CookLog): void {
  log = opened;
  opened.subscribe(() => void hear());
  void hear();
}

/** Tells the worker what is new, and the time; one telling at a time. */
async function hear(): Promise<void> {
  if (!log || !liveNow() || busy) return;
  busy = true;
  const mine = turn;
  try {
    const events = log.events();
    const ended = events.some(({ kind }) => kind === 'ended');
    const openForS = (performance.now() - openedAt) / 1000;
    become({ openForS, link: log.link(), writer: log.writer(), ended });
    if (!planned) await follow(events.find(({ kind }) => kind === 'begun')?.body as Begun | undefined);
    if (!planned || mine !== turn) return;
    const fresh = events.filter((event) => !toldEvents.has(event));
    for (const event of fresh) toldEvents.add(event);
    await worker.hear(fresh, log.nowMs(), signs());
  } catch (error) {
    become({ failed: error instanceof Error ? error.message : String(error) });
  } finally {
    busy = false;
  }
}

async function follow(begun: Begun | undefined): Promise<void> {
  if (!begun) return;
  const opened = await worker.follow(turn, begun);
  if (opened.kind === 'ready') planned = opened.planned;
  else if (opened.kind === 'failed') become({ failed: opened.message });
}

function signs(): DeviceSigns {
  const link = log?.link();
  if (performance.now() - roomAtMs > roomEveryMs) void measureRoom();
  return { freeBytes, writeFailed: link?.storage === 'full' || link?.server?.state === 'failing' };
}

async function measureRoom(): Promise<void> {
  roomAtMs = performance.now();
  const { quota, usage } = (await navigator.storage?.estimate?.().catch(() => undefined)) ?? {};
  freeBytes = quota === undefined || usage === undefined ? null : quota - usage;
}

setInterval(() => void hear(), tickMs);

/** Done one after the other; where another tab writes, the page says so. */
let queue: Promise<unknown> = Promise.resolve();
function inTurn(work: (to: CookLog) => Promise<unknown>): void {
  queue = queue.then(async () => {
    if (!log) return;
    try {
      await work(log);
    } catch (error) {
      if (!(error instanceof WrittenElsewhere)) throw error;
      become({ writer: 'elsewhere' });
    }
  });
}

export const acts: Acts = {
  perform: (deeds) =>
    inTurn(async (to) => {
      let parts = liveNow()?.cooked?.view.progress.partsGiven ?? 0;
      for (const deed of deeds) {
        const { kind, body } = deedBody(deed, parts);
        if (deed.kind === 'alkali') parts++;
        await to.add(kind, body);
      }
    }),
  say: (kind, body) => inTurn((to) => to.add(kind, body)),
  putAside: () => void worker.putAside(),
  correct: (entry, body) =>
    inTurn((to) => to.add('correction', { corrects: entry.id, kind: entry.kind, body } as never)),
  saveLog: saveOpenLog,
};

/** What a guest's taps come to. */
export const lookingOn: Acts = {
  perform: () => {},
  say: () => {},
  putAside: () => {},
  looksOn: true,
  saveLog: saveOpenLog,
};

function saveOpenLog(): void {
  if (log && planned) saveLog(log.cook, planned.name, log.events());
}

export const takeOver = (): void => inTurn((to) => to.takeOver());
