/** Files of invented cooks, as another store would have written them. */
import { createHash, randomUUID } from 'node:crypto';
import { simulatedLog } from '../../src/core/book/simulatedLog.ts';
import { writeCookFile } from '../../src/core/log/cookFile.ts';
import type { LogEvent } from '../../src/core/log/event.ts';
import { defaultKit } from '../../src/core/pan/kit.ts';
import { defaultRequest } from '../../src/core/planning/request.ts';
import { begunBody, sampleBodies, sampleDevice } from '../../test/sampleCook.ts';

const sha256 = (text: string) => createHash('sha256').update(text).digest('hex');

/** @returns the file of a cook that began, was read `readings` times, once a second, and ended */
export function cookWith(readings: number): string {
  const cook = randomUUID();
  const phone = sampleDevice(cook, { aheadMs: 7_200_000 });
  const taken = Array.from({ length: readings }, (_, s) => {
    const valueC = Math.round(1000 + 400 * Math.sin(s / 800)) / 10;
    return phone.make('reading', { ...sampleBodies.reading, valueC, raw: valueC }, s + 1);
  });
  const events = [phone.make('begun', begunBody, 0), ...taken, phone.make('ended', { how: 'done' }, readings + 2)];
  return filed(cook, events);
}

/** @returns the file of a cook of the Desk's first request on a hidden pan, with a reading each 10 s */
export function cookOnAPan(seed: number): string {
  const cook = randomUUID();
  const phone = sampleDevice(cook);
  const cooking = { request: defaultRequest, kit: defaultKit, mode: 'live', planId: null, seed } as const;
  const { events, lastS } = simulatedLog(cooking, (kind, body, atS) => phone.make(kind, body, atS));
  return filed(cook, [...events, phone.make('ended', { how: 'done' }, lastS + 60)]);
}

function filed(cook: string, events: readonly LogEvent[]): string {
  const stamped = events.map((event, s) => ({
    ...event,
    tServer: new Date(Date.UTC(2031, 4, 9, 18, 30, s)).toISOString(),
  }));
  return writeCookFile(cook, stamped, sha256);
}
