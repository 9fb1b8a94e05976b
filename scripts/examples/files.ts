/** The generated files of `examples`: cooks of the invented allotment club, and the plan of the first. The same each time. */
import { createHash } from 'node:crypto';
import { planDocument } from '../../src/cli/plan/planDocument.ts';
import { type Noting, simulatedLog } from '../../src/core/book/simulatedLog.ts';
import { writeCookFile } from '../../src/core/log/cookFile.ts';
import type { KnownEvent } from '../../src/core/log/event.ts';
import { makeEvent } from '../../src/core/log/makeEvent.ts';
import type { Kit } from '../../src/core/pan/kit.ts';
import { prepareKit } from '../../src/core/pan/preparedKit.ts';
import { planFor } from '../../src/core/planning/plan.ts';
import type { PlanRequest } from '../../src/core/planning/request.ts';
import { kits, plans } from '../../src/server/demo/club.ts';

interface Example {
  readonly request: PlanRequest;
  readonly kit: Kit;
  /** Of all that is hidden: cooks of one pan have the same. */
  readonly seed: number;
  readonly begun: string;
}

const [{ request: bonfire }, { request: darker }] = plans;
const [hall, shed] = kits;

const cooks: Readonly<Record<string, Example>> = {
  bonfire: { request: bonfire, kit: hall, seed: 27, begun: '2031-10-04T18:00:00Z' },
  'bonfire-darker': { request: darker, kit: hall, seed: 27, begun: '2031-10-18T18:00:00Z' },
  'bonfire-in-the-shed': {
    request: { ...bonfire, name: 'Bonfire night, in the shed' },
    kit: shed,
    seed: 15,
    begun: '2031-10-25T18:00:00Z',
  },
};

export function exampleFiles(): Readonly<Record<string, string>> {
  const files = Object.entries(cooks).map(([name, cook]) => [`${name}.ndjson`, cookFile(name, cook)]);
  return { 'bonfire-plan.json': planOf(cooks['bonfire']), ...Object.fromEntries(files) };
}

function planOf({ request, kit }: Example): string {
  const prepared = prepareKit(kit);
  const planned = planFor(request, prepared);
  if (planned.kind === 'refused') throw new Error(planned.refusals[0].message);
  return `${JSON.stringify(planDocument({ ...planned, kit, prepared }), null, 2)}\n`;
}

/** One reading of three: enough to follow a pan by, and a third of the file. */
function cookFile(name: string, { begun, ...cooking }: Example): string {
  const cook = idOf(name);
  const noting = phoneOf(cook, Date.parse(begun));
  const { events, lastS } = simulatedLog({ ...cooking, mode: 'live', planId: null }, noting);
  const few = events.filter(({ kind }, place) => kind !== 'reading' || place % 3 === 0);
  const all: readonly KnownEvent[] = [...few, noting('ended', { how: 'done' }, lastS + 60)];
  return writeCookFile(
    cook,
    all.map((event, place) => ({ ...event, deviceSeq: place + 1 })),
    sha256,
  );
}

function phoneOf(cook: string, startMs: number): Noting {
  const device = idOf(`${cook} phone`);
  return (kind, body, atS) => {
    const tMono = Math.round(1000 * atS);
    const random = createHash('sha256').update(`${cook} ${kind} ${tMono}`).digest().subarray(0, 10);
    const when = { wallMs: startMs + tMono, tMono, clockOffsetMs: 0, clockErrMs: 0, tz: 'Europe/London' };
    return makeEvent({ cook, device, bootId: device, deviceSeq: 1, ...when, random }, kind, body);
  };
}

/** A UUID of version 8 (RFC 9562, 5.8). */
function idOf(name: string): string {
  const hex = sha256(name);
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-8${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}

function sha256(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}
