/** Files of invented cooks with a reading a second, as another store would have written them. */
import { createHash, randomUUID } from 'node:crypto';
import { writeCookFile } from '../../src/core/log/cookFile.ts';
import { begunBody, sampleBodies, sampleDevice } from '../../test/sampleCook.ts';

const sha256 = (text: string) => createHash('sha256').update(text).digest('hex');

/** @returns the file of a cook that began, was read `readings` times and ended */
export function cookWith(readings: number): string {
  const cook = randomUUID();
  const phone = sampleDevice(cook, { aheadMs: 7_200_000 });
  const taken = Array.from({ length: readings }, (_, s) => {
    const valueC = Math.round(1000 + 400 * Math.sin(s / 800)) / 10;
    return phone.make('reading', { ...sampleBodies.reading, valueC, raw: valueC }, s + 1);
  });
  const events = [phone.make('begun', begunBody, 0), ...taken, phone.make('ended', { how: 'done' }, readings + 2)];
  const stamped = events.map((event, s) => ({
    ...event,
    tServer: new Date(Date.UTC(2031, 4, 9, 18, 30, s)).toISOString(),
  }));
  return writeCookFile(cook, stamped, sha256);
}
