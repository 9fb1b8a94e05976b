// A rehearsal whose thermometer is real, or what stands in for one: the hidden pan's temperatures come to the server by each way, the cook's log
// is followed as a page follows it, and what is advised is done to the pan. It has to go as the same rehearsal does without any of this.
import { expect, it, type TestContext, vi } from 'vitest';
import { createLiveCook } from '../src/core/advice/liveCook.ts';
import { createRehearsal, followAdvice } from '../src/core/advice/rehearsal.ts';
import type { Begun, EventBodies, EventKind } from '../src/core/log/bodies.ts';
import { deedBody } from '../src/core/log/deedBody.ts';
import type { LogEvent, StampedEvent } from '../src/core/log/event.ts';
import { createHiddenPan } from '../src/core/pan/hiddenPan.ts';
import { defaultKit } from '../src/core/pan/kit.ts';
import { prepareKit } from '../src/core/pan/preparedKit.ts';
import type { Deed } from '../src/core/pan/steps.ts';
import { begunOf } from '../src/core/planning/begunOf.ts';
import { planFor } from '../src/core/planning/plan.ts';
import { defaultRequest } from '../src/core/planning/request.ts';
import { normalNumbers } from '../src/core/reactions/normal.ts';
import { steadyClock } from '../src/server/cooking/steadyClock.ts';
import type { OwnBroker } from '../src/server/inputs/ownBroker.ts';
import { chooseBluetooth } from '../src/web/places/devices/instruments/bluetooth.ts';
import { listenTo, readingsGoTo, stopListening } from '../src/web/places/devices/instruments/listening.ts';
import { listeningServer } from './liveServer.ts';
import { broker, curl, mosquittoPeer, needs, socatLine } from './peers.ts';
import { sampleDevice, startMs } from './sampleCook.ts';
import { scratchFolder } from './testServer.ts';

const seed = 7;
const members = 16;
const reactionS = 25;
const readEveryS = 10;
const longestS = 4 * 3600;

const prepared = prepareKit(defaultKit);
/** With short holds: what is tried is the way of the readings. */
const request = { ...defaultRequest, invertMinutes: 4, brownMinutes: 4, roastMinutes: 1 };
const planned = planFor(request, prepared);
if (planned.kind === 'refused') throw new Error(planned.refusals[0].message);
const { plan } = planned;
const rehearsed: Begun = begunOf(plan, defaultKit, { mode: 'rehearsal', rehearsal: { seed, speed: 1 }, planId: null });

/** What was done when, in words to compare. */
const told = (timeS: number, deed: Deed) => `${timeS} s: ${JSON.stringify(deed)}`;

/** The rehearsal as it goes in one process, with nothing between pan and twin. */
const alone = (() => {
  const rehearsal = createRehearsal({ prepared, begun: rehearsed, members });
  followAdvice(rehearsal, plan.steps, { reactionS, longestS });
  return rehearsal.deeds.map(({ timeS, deed }) => told(timeS, deed));
})();

type Kitchen = Awaited<ReturnType<typeof kitchen>>;

/** A server whose clock goes by the pan's, with a rehearsal begun on it. */
async function kitchen() {
  let timeS = 0;
  const ms = () => startMs + 1000 * timeS;
  let own: OwnBroker | undefined;
  const { app, address } = await listeningServer(scratchFolder(), {
    clock: steadyClock(ms, ms),
    broker: { host: '127.0.0.1', port: 0, opened: (opened) => (own = opened) },
  });
  const headers = { host: new URL(address).host };
  const ask = async (url: string, payload?: object) => {
    const answer = await app.inject({ url, headers, ...(payload && { method: 'POST', payload }) });
    if (answer.statusCode >= 300) throw new Error(answer.body);
    return answer.json();
  };
  const device = sampleDevice('4f1c0a2e-7f0b-4c11-9d3e-5a0b6a2f1c77');
  const cook = device.make('begun', rehearsed, 0).cook;
  await ask('/api/cooks', device.make('begun', rehearsed, 0));
  const events: StampedEvent[] = [];
  return {
    address,
    cook,
    events,
    brokerPort: () => own?.port ?? 0,
    ask,
    note: (kind: EventKind, body: EventBodies[EventKind], atS: number) =>
      ask(`/api/cooks/${cook}/events`, device.make(kind, body, atS)),
    moveTo(toS: number) {
      timeS = toS;
    },
    nowMs: () => 1000 * timeS,
    /** What came into the log since the last look. */
    async look() {
      const since = events.at(-1)?.seq ?? 0;
      events.push(...((await ask(`/api/cooks/${cook}/events?since=${since}`)) as { events: StampedEvent[] }).events);
      return events;
    },
    listen: async (input: object) => {
      const declared = { name: 'Pan', probe: 'pan', unit: 'Cel', everyS: readEveryS, on: true };
      await ask('/api/inputs', { ...declared, ...input });
      await expect.poll(async () => (await ask('/api/inputs')).inputs[0].status.state).toBe('waiting');
    },
  };
}

/** Makes the pan's thermometer send what it shows. */
type Sends = (shownC: number) => Promise<void> | void;

async function byBroker(there: Kitchen): Promise<Sends> {
  const { address, signedIn } = await broker();
  const will = { topic: 'kitchen/pan/state', message: 'offline' };
  const peer = await mosquittoPeer({ address, signedIn }, { topic: 'kitchen/pan', will });
  const named = { broker: address, user: signedIn.username, password: signedIn.password };
  await there.listen({ kind: 'mqtt', ...named, topic: 'kitchen/pan', path: 't' });
  return (shownC) => peer.publish(JSON.stringify({ t: shownC }));
}

async function byOwnBroker(there: Kitchen): Promise<Sends> {
  await there.listen({ kind: 'mqtt', broker: 'own', topic: 'kitchen/pan', path: '' });
  const address = `mqtt://127.0.0.1:${there.brokerPort()}`;
  const { code } = await there.ask('/api/invitations', { role: 'probe', cook: there.cook });
  const { token } = await there.ask('/api/pairing', { code, name: 'Board' });
  const will = { topic: 'kitchen/pan/state', message: 'offline' };
  const signedIn = { username: 'board', password: token };
  const peer = await mosquittoPeer({ address, signedIn }, { topic: 'kitchen/pan', will });
  return (shownC) => peer.publish(String(shownC));
}

async function bySerial(there: Kitchen): Promise<Sends> {
  const { port, write } = await socatLine();
  await there.listen({ kind: 'serial', port, baud: 9600, pattern: 'T={} C' });
  return (shownC) => write(`T=${shownC} C\r\n`);
}

function byHttp({ address, cook }: Kitchen): Sends {
  const line = ['-H', 'content-type: text/plain', `${address}/api/readings?unit=C&cook=${cook}&probe=pan`];
  return async (shownC) => void (await curl(...line, '-d', String(shownC)));
}

/** The page's own reader, on what stands in for the browser's objects. */
async function byBluetooth(there: Kitchen, { onTestFinished }: TestContext): Promise<Sends> {
  const clock = vi.spyOn(performance, 'now').mockImplementation(there.nowMs);
  onTestFinished(() => {
    stopListening();
    readingsGoTo(undefined);
    clock.mockRestore();
  });
  const characteristic = Object.assign(new EventTarget(), {
    value: undefined as DataView | undefined,
    startNotifications: async () => characteristic,
    readValue: async () => new DataView(new ArrayBuffer(2)),
  });
  const service = { getCharacteristic: async () => characteristic };
  const gatt = { connect: async () => ({ getPrimaryService: async () => service }), disconnect: () => {} };
  const stub = Object.assign(new EventTarget(), { name: 'pan', gatt });
  readingsGoTo((reading) => void there.note('reading', reading, there.nowMs() / 1000));
  listenTo(await chooseBluetooth({ requestDevice: async () => stub as never }));
  await Promise.resolve();
  return (shownC) => {
    const value = new DataView(new ArrayBuffer(2));
    value.setInt16(0, Math.round(100 * shownC), true);
    characteristic.value = value;
    characteristic.dispatchEvent(new Event('characteristicvaluechanged'));
  };
}

it('the rehearsal that is compared with is a whole one', () => {
  expect(alone.length).toBeGreaterThan(8);
  expect(alone.at(-1)).toContain('pour');
});

it.for([
  ['mosquitto_pub, by a broker', 'mosquitto_pub', byBroker],
  ['mosquitto_pub, by Umberpan’s own broker', 'mosquitto_pub', byOwnBroker],
  ['socat, at a serial port', 'socat', bySerial],
  ['curl', 'curl', byHttp],
  ['the objects of Bluetooth', undefined, byBluetooth],
] as const)(
  'is led by advice to the pour on readings that come from %s',
  { timeout: 240_000 },
  async ([, program, start], context) => {
    if (program) needs(program, context);
    const there = await kitchen();
    const send = await start(there, context);
    const pan = createHiddenPan(prepared, rehearsed.amounts.charge, normalNumbers(2 * seed));
    const { charge } = rehearsed.amounts;
    const live = createLiveCook({ prepared, charge, steps: plan.steps, seed, members });
    const progress = () => live.followed.progress;
    const done: string[] = [];
    let read = 0;
    // A thermometer is read for its noise once before the cook, as in any rehearsal.
    pan.reading();

    async function perform(deed: Deed, timeS: number) {
      pan.perform(deed);
      done.push(told(timeS, deed));
      const { kind, body } = deedBody(deed, progress().partsGiven);
      await there.note(kind, body, timeS);
      live.hear(await there.look());
    }

    async function readAt(timeS: number) {
      pan.moveTo(timeS);
      there.moveTo(timeS);
      await send(Math.round(100 * pan.reading()) / 100);
      read += 1;
      const came = (events: readonly LogEvent[]) => events.filter(({ kind }) => kind === 'reading').length;
      await vi.waitUntil(async () => came(await there.look()) === read, { timeout: 5000, interval: 2 });
      live.hear(there.events);
      live.moveTo(timeS);
    }

    await perform({ kind: 'heat', notch: plan.steps[0].approachNotch }, 0);
    let pending: { readonly atS: number; readonly deeds: readonly Deed[] } | undefined;
    for (let timeS = readEveryS / 2; !progress().poured && timeS < longestS; timeS += readEveryS / 2) {
      if (timeS % readEveryS === 0) await readAt(timeS);
      else pan.moveTo(timeS);
      there.moveTo(timeS);
      if (pending && timeS >= pending.atS) {
        for (const deed of pending.deeds) await perform(deed, timeS);
        pending = undefined;
      }
      if (pending || progress().poured || timeS % readEveryS !== 0) continue;
      const { deeds } = live.advice();
      if (deeds.length > 0) pending = { atS: timeS + reactionS, deeds };
    }
    expect(done).toEqual(alone);
  },
);
