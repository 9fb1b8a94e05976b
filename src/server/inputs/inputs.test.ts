// Real peers feed a cook: other MQTT clients by way of a broker, lines written to the far end of a serial line, and a client of HTTP.
import { describe, expect, it } from 'vitest';
import { listeningServer } from '../../../test/liveServer.ts';
import { broker, curl, libraryPeer, mosquittoPeer, needs, pythonLine, socatLine } from '../../../test/peers.ts';
import { sampleCook } from '../../../test/sampleCook.ts';
import { scratchFolder, testServer } from '../../../test/testServer.ts';
import type { InputRecord } from '../../api/input.ts';
import type { StampedEvent } from '../../core/log/event.ts';
import { foldCook } from '../../core/log/fold.ts';
import { valueAt } from './valueAt.ts';

type App = Awaited<ReturnType<typeof testServer>>;

/** A cook that begins now. */
function beginning(mode: 'live' | 'rehearsal' = 'live') {
  const { cook, begun } = sampleCook();
  const rehearsal = mode === 'live' ? null : { seed: 1, speed: 1 };
  const tDevice = new Date().toISOString();
  const payload = { ...begun, tDevice, clockOffsetMs: 0, body: { ...begun.body, mode, rehearsal } };
  return { cook, payload };
}

async function begin(app: App, mode: 'live' | 'rehearsal' = 'live') {
  const { cook, payload } = beginning(mode);
  expect((await app.inject({ method: 'POST', url: '/api/cooks', payload })).statusCode).toBe(201);
  return cook;
}

async function readings(app: App, cook: string) {
  return readingsIn((await app.inject(`/api/cooks/${cook}/events`)).json());
}

function readingsIn({ events }: { readonly events: readonly StampedEvent[] }) {
  return foldCook(events).readings.map(({ body: { probe, valueC, quality, raw } }) => ({
    probe,
    valueC,
    quality,
    raw,
  }));
}

const inputsOf = async (app: App) => ((await app.inject('/api/inputs')).json() as { inputs: InputRecord[] }).inputs;
const only = async (app: App) => (await inputsOf(app))[0] as InputRecord;

async function listen(app: App, payload: object) {
  const answer = await app.inject({ method: 'POST', url: '/api/inputs', payload });
  expect(answer.statusCode, answer.body).toBe(201);
  return answer.json().id as string;
}

const mqttInput = (address: string) => ({
  kind: 'mqtt',
  name: 'Pan by radio',
  probe: 'pan',
  unit: '[degF]',
  everyS: 0.2,
  on: true,
  broker: address,
  user: 'pan',
  password: 'plum',
  topic: 'kitchen/pan',
  path: 'probes.0.temperature',
  goneTopic: 'kitchen/pan/state',
});

const sent = (temperature: number | null) => JSON.stringify({ probes: [{ temperature }] });

/** What such a thermometer publishes to, and what the broker says when it is gone. */
const wish = { topic: 'kitchen/pan', will: { topic: 'kitchen/pan/state', message: 'offline' } };

const mqttPeers = [
  ['node', libraryPeer],
  ['mosquitto_pub', mosquittoPeer],
] as const;

describe('a thermometer by MQTT', () => {
  it.for(mqttPeers)(
    'feeds a cook from %s: kept messages are passed over, and its will says that it is gone',
    { timeout: 20_000 },
    async ([program, connect], context) => {
      needs(program, context);
      const there = await broker();
      const app = await testServer();
      const cook = await begin(app);
      const peer = await connect(there, wish);
      await peer.keep(sent(300));

      const id = await listen(app, mqttInput(there.address));
      await expect
        .poll(async () => (await only(app)).status, { timeout: 5000 })
        .toMatchObject({
          passedOver: 1,
          reason: expect.stringContaining('kept'),
          cook: { id: cook },
        });
      expect(await readings(app, cook)).toEqual([]);
      expect(JSON.stringify(await only(app))).not.toContain('plum');

      await peer.publish(sent(266));
      await expect.poll(() => readings(app, cook)).toHaveLength(1);
      await new Promise((resolve) => setTimeout(resolve, 150));
      await peer.publish(sent(null));
      await expect.poll(() => readings(app, cook)).toHaveLength(2);
      await new Promise((resolve) => setTimeout(resolve, 150));
      // The broker publishes the will of a client whose connection breaks (MQTT 3.1.1, section 3.1.2.5).
      peer.breakOff();
      await expect.poll(async () => (await only(app)).status.state).toBe('gone');
      expect(await readings(app, cook)).toEqual([
        { probe: 'pan', valueC: expect.closeTo(130, 6), quality: 'fresh', raw: 266 },
        { probe: 'pan', valueC: null, quality: 'lost', raw: null },
        { probe: 'pan', valueC: null, quality: 'lost', raw: 'offline' },
      ]);

      // Taken away, it hears nothing more.
      expect((await app.inject({ method: 'DELETE', url: `/api/inputs/${id}` })).statusCode).toBe(204);
      expect(await inputsOf(app)).toEqual([]);
    },
  );

  it('is heard before a cook, to be tried; a change keeps the password, but tells it to no other broker', async () => {
    const there = await broker();
    const { address } = there;
    const app = await testServer();
    const id = await listen(app, mqttInput(address));
    const peer = await libraryPeer(there, wish);
    await expect.poll(async () => (await only(app)).status.state).toBe('waiting');
    await peer.publish(sent(212));
    await expect
      .poll(async () => (await only(app)).status.last[0])
      .toMatchObject({ raw: 212, valueC: expect.closeTo(100, 6) });
    expect((await only(app)).status.cook).toBeNull();

    const { password: _, ...rest } = mqttInput(address);
    const change = (payload: object) => app.inject({ method: 'PUT', url: `/api/inputs/${id}`, payload });
    expect((await change({ ...rest, path: '' })).statusCode).toBe(200);
    await expect.poll(async () => (await only(app)).status.state).toBe('waiting');
    await peer.publish('213');
    await expect.poll(async () => (await only(app)).status.last[0]?.raw).toBe('213');
    await change({ ...rest, broker: 'mqtt://127.0.0.1:1' });
    expect((await only(app)).input).toMatchObject({ hasPassword: false });
  }, 20_000);

  it('that floods is heard as often as it was declared to send, and the rest is counted', async () => {
    const there = await broker();
    const app = await testServer();
    const cook = await begin(app);
    await listen(app, { ...mqttInput(there.address), everyS: 10 });
    const peer = await libraryPeer(there, wish);
    await expect.poll(async () => (await only(app)).status.state).toBe('waiting');
    for (let n = 0; n < 200; n++) await peer.publish(sent(266 + n / 100));
    await expect
      .poll(async () => (await only(app)).status)
      .toMatchObject({ heard: 1, passedOver: 199, reason: 'it sends more often than declared' });
    expect(await readings(app, cook)).toHaveLength(1);
  }, 20_000);

  it('says what is wrong: no broker, a wrong password', async () => {
    const { address } = await broker();
    const app = await testServer();
    await listen(app, { ...mqttInput(address), password: 'damson' });
    await expect
      .poll(async () => (await only(app)).status, { timeout: 5000 })
      .toMatchObject({ state: 'failing', reason: expect.stringMatching(/authoriz/i) });
    const other = await testServer();
    await listen(other, mqttInput('mqtt://127.0.0.1:1'));
    await expect
      .poll(async () => (await only(other)).status, { timeout: 5000 })
      .toMatchObject({ state: 'failing', reason: expect.stringContaining('127.0.0.1:1') });
  }, 20_000);
});

const serialLines = [
  ['python3', pythonLine],
  ['socat', socatLine],
] as const;

describe('a thermometer at a serial port', () => {
  it.for(serialLines)(
    'feeds a rehearsal by a line of %s, and is missed when it is unplugged',
    { timeout: 20_000 },
    async ([program, open], context) => {
      needs(program, context);
      const app = await testServer();
      const cook = await begin(app, 'rehearsal');
      const line = await open();
      await listen(app, {
        kind: 'serial',
        name: 'Board',
        probe: 'couple',
        unit: 'Cel',
        everyS: 0.2,
        on: true,
        port: line.port,
        baud: 9600,
        pattern: 'T={} C*',
      });
      await expect.poll(async () => (await only(app)).status.state, { timeout: 5000 }).toBe('waiting');
      line.write('starting\r\nT=131.');
      line.write('25 C ok\r\n');
      await expect.poll(() => readings(app, cook)).toHaveLength(1);
      await new Promise((resolve) => setTimeout(resolve, 150));
      line.write('T=-- C\r\n');
      await expect
        .poll(() => readings(app, cook))
        .toEqual([
          { probe: 'couple', valueC: 131.25, quality: 'fresh', raw: 131.25 },
          { probe: 'couple', valueC: null, quality: 'lost', raw: '--' },
        ]);
      expect((await only(app)).status).toMatchObject({ passedOver: 1, heard: 2 });
      line.unplug();
      await expect.poll(async () => (await only(app)).status.state, { timeout: 5000 }).toBe('failing');
    },
  );
});

describe('a thermometer by HTTP', () => {
  it('feeds a cook with curl: from the machine that serves, and from the network with a token that it got by a code', async (context) => {
    needs('curl', context);
    const { address } = await listeningServer(scratchFolder(), { names: ['pan.test'] });
    const asJson = ['-H', 'content-type: application/json', '-d'];
    const asText = ['-H', 'content-type: text/plain', '-d'];
    const { cook, payload } = beginning();
    expect((await curl(...asJson, JSON.stringify(payload), `${address}/api/cooks`)).status).toBe(201);
    expect((await curl(...asText, '131.5', `${address}/api/readings?unit=C`)).status).toBe(201);

    const { port } = new URL(address);
    const network = `http://pan.test:${port}`;
    const fromNetwork = (...args: readonly string[]) => curl('--resolve', `pan.test:${port}:127.0.0.1`, ...args);
    const line = [...asText, '268.7', `${network}/api/readings?unit=F&probe=board`];
    expect((await fromNetwork(...line)).status).toBe(401);
    const invited = await curl(...asJson, '{"role": "probe"}', `${address}/api/invitations`);
    const told = JSON.stringify({ code: JSON.parse(invited.body).code, name: 'Board' });
    const paired = await fromNetwork(...asJson, told, `${network}/api/pairing`);
    const { token } = JSON.parse(paired.body) as { token: string };
    expect((await fromNetwork('-H', `authorization: Bearer ${token}`, ...line)).status).toBe(201);
    expect(readingsIn(JSON.parse((await curl(`${address}/api/cooks/${cook}/events`)).body))).toEqual([
      { probe: 'probe', valueC: 131.5, quality: 'fresh', raw: 131.5 },
      { probe: 'board', valueC: expect.closeTo(131.5, 6), quality: 'fresh', raw: 268.7 },
    ]);
  });
});

it.each([
  ['', '131.5', '131.5'],
  ['t', '{"t": 131.5}', 131.5],
  ['a.1.b', '{"a": [0, {"b": "131.5"}]}', '131.5'],
  ['a.length', '{"a": [1, 2]}', 2],
  ['toString', '{"t": 1}', null],
  ['__proto__.t', '{"t": 1}', null],
  ['t', 'offline', 'offline'],
  ['t', '{"t": {"deep": 1}}', null],
])('at the path %j of %j stands %j', (path, message, value) => {
  expect(valueAt(message, path)).toBe(value);
});

it.each([
  ['broker', { broker: 'http://evil.test' }],
  ['topic', { topic: 'kitchen/#' }],
  ['everyS', { everyS: 0 }],
])('refuses an input for its %s', async (field, change) => {
  const app = await testServer();
  const payload = { ...mqttInput('mqtt://127.0.0.1:1'), ...change };
  const answer = await app.inject({ method: 'POST', url: '/api/inputs', payload });
  expect(answer.statusCode).toBe(400);
  expect(answer.json().errors[0].field).toBe(field);
});

it.each(['/etc/passwd', '/dev/../etc/passwd', 'COM1;x'])('opens no file as a port: %s', async (port) => {
  const app = await testServer();
  const serial = { kind: 'serial', name: 'x', probe: 'x', unit: 'Cel', everyS: 1, on: true, baud: 9600, pattern: '{}' };
  const answer = await app.inject({ method: 'POST', url: '/api/inputs', payload: { ...serial, port } });
  expect([answer.statusCode, answer.json().errors[0].field]).toEqual([400, 'port']);
});
