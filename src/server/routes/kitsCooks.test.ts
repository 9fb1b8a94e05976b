import { randomUUID } from 'node:crypto';
import { expect, it } from 'vitest';
import { begunBody, sampleDevice } from '../../../test/sampleCook.ts';
import { testServer } from '../../../test/testServer.ts';

function whole() {
  const device = sampleDevice(randomUUID());
  const reading = { probe: 'imported', valueC: 80, quality: 'byHand', unit: 'Cel', raw: 80 } as const;
  return [
    device.make('begun', begunBody, 0),
    device.make('reading', reading, 60),
    device.make('ended', { how: 'done' }, 90),
  ];
}

it('takes a cook in whole, once, and lists it', async () => {
  const app = await testServer();
  const payload = whole();
  const send = () => app.inject({ method: 'POST', url: '/api/cooks/whole', payload });
  const answer = await send();
  expect([answer.statusCode, answer.json()]).toEqual([201, { cook: payload[0]?.cook, events: 3, new: 3 }]);
  expect((await send()).json().new).toBe(0);
  const { cooks } = (await app.inject('/api/cooks')).json();
  expect(cooks).toHaveLength(1);
  expect(cooks[0]).toMatchObject({ id: payload[0]?.cook, ended: 'done' });
});

it.each([
  ['does not begin', (events: ReturnType<typeof whole>) => events.slice(1)],
  ['holds another cook', (events: ReturnType<typeof whole>) => [...events, ...whole()]],
  ['has a reading that is none', ([begun, reading]: ReturnType<typeof whole>) => [begun, { ...reading, body: {} }]],
])('refuses one that %s, and writes nothing', async (_, spoil) => {
  const app = await testServer();
  const answer = await app.inject({ method: 'POST', url: '/api/cooks/whole', payload: spoil(whole()) });
  expect(answer.statusCode).toBe(400);
  expect((await app.inject('/api/cooks')).json().cooks).toEqual([]);
});
