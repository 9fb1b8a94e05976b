// Real peers feed a cook: another MQTT client by way of a broker, and lines written to the far end of a serial line.
import { execFileSync, spawn } from 'node:child_process';
import { createServer } from 'node:net';
import { Aedes } from 'aedes';
import { connectAsync } from 'mqtt';
import { describe, expect, it, onTestFinished } from 'vitest';
import { sampleCook } from '../../../test/sampleCook.ts';
import { testServer } from '../../../test/testServer.ts';
import type { InputRecord } from '../../api/input.ts';
import type { StampedEvent } from '../../core/log/event.ts';
import { foldCook } from '../../core/log/fold.ts';
import { valueAt } from './valueAt.ts';

type App = Awaited<ReturnType<typeof testServer>>;

async function begin(app: App, mode: 'live' | 'rehearsal' = 'live') {
  const { cook, begun } = sampleCook();
  const rehearsal = mode === 'live' ? null : { seed: 1, speed: 1 };
  const payload = { ...begun, body: { ...begun.body, mode, rehearsal } };
  expect((await app.inject({ method: 'POST', url: '/api/cooks', payload })).statusCode).toBe(201);
  return cook;
}

async function readings(app: App, cook: string) {
  const { events } = (await app.inject(`/api/cooks/${cook}/events`)).json() as { events: StampedEvent[] };
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

/** A broker on a port of its own, with one user. */
async function broker() {
  const aedes = await Aedes.createBroker({
    authenticate: (_, user, password, done) => done(null, user === 'pan' && String(password) === 'plum'),
  });
  const server = createServer(aedes.handle);
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = `mqtt://127.0.0.1:${(server.address() as { port: number }).port}`;
  const signedIn = { username: 'pan', password: 'plum' };
  onTestFinished(async () => {
    await new Promise<void>((resolve) => aedes.close(() => resolve()));
    server.close();
  });
  return { address, signedIn };
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

describe('a thermometer by MQTT', () => {
  it('feeds a cook: kept messages are passed over, and its will says that it is gone', async () => {
    const { address, signedIn } = await broker();
    const app = await testServer();
    const cook = await begin(app);
    const will = { topic: 'kitchen/pan/state', payload: Buffer.from('offline'), qos: 0 as const, retain: false };
    const peer = await connectAsync(address, { ...signedIn, will });
    onTestFinished(() => peer.endAsync(true).then(() => {}));
    await peer.publishAsync('kitchen/pan', sent(300), { retain: true });

    const id = await listen(app, mqttInput(address));
    await expect
      .poll(async () => (await only(app)).status, { timeout: 5000 })
      .toMatchObject({
        passedOver: 1,
        reason: expect.stringContaining('kept'),
        cook: { id: cook },
      });
    expect(await readings(app, cook)).toEqual([]);
    expect(JSON.stringify(await only(app))).not.toContain('plum');

    await peer.publishAsync('kitchen/pan', sent(266));
    await expect.poll(() => readings(app, cook)).toHaveLength(1);
    await new Promise((resolve) => setTimeout(resolve, 150));
    await peer.publishAsync('kitchen/pan', '{"probes": [{"temperature": null}]}');
    await expect.poll(() => readings(app, cook)).toHaveLength(2);
    await new Promise((resolve) => setTimeout(resolve, 150));
    // The broker publishes the will of a client whose connection breaks (MQTT 3.1.1, section 3.1.2.5).
    peer.stream.destroy();
    await expect.poll(async () => (await only(app)).status.state).toBe('gone');
    expect(await readings(app, cook)).toEqual([
      { probe: 'pan', valueC: expect.closeTo(130, 6), quality: 'fresh', raw: 266 },
      { probe: 'pan', valueC: null, quality: 'lost', raw: null },
      { probe: 'pan', valueC: null, quality: 'lost', raw: 'offline' },
    ]);

    // Taken away, it hears nothing more.
    expect((await app.inject({ method: 'DELETE', url: `/api/inputs/${id}` })).statusCode).toBe(204);
    expect(await inputsOf(app)).toEqual([]);
  }, 20_000);

  it('is heard before a cook, to be tried; a change keeps the password, but tells it to no other broker', async () => {
    const { address, signedIn } = await broker();
    const app = await testServer();
    const id = await listen(app, mqttInput(address));
    const peer = await connectAsync(address, signedIn);
    onTestFinished(() => peer.endAsync(true).then(() => {}));
    await expect.poll(async () => (await only(app)).status.state).toBe('waiting');
    await peer.publishAsync('kitchen/pan', sent(212));
    await expect
      .poll(async () => (await only(app)).status.last[0])
      .toMatchObject({ raw: 212, valueC: expect.closeTo(100, 6) });
    expect((await only(app)).status.cook).toBeNull();

    const { password: _, ...rest } = mqttInput(address);
    const change = (payload: object) => app.inject({ method: 'PUT', url: `/api/inputs/${id}`, payload });
    expect((await change({ ...rest, path: '' })).statusCode).toBe(200);
    await expect.poll(async () => (await only(app)).status.state).toBe('waiting');
    await peer.publishAsync('kitchen/pan', '213');
    await expect.poll(async () => (await only(app)).status.last[0]?.raw).toBe('213');
    await change({ ...rest, broker: 'mqtt://127.0.0.1:1' });
    expect((await only(app)).input).toMatchObject({ hasPassword: false });
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

const python = hasPython();
describe.skipIf(!python)('a thermometer at a serial port', () => {
  it('feeds a rehearsal, line by line, and is found again after it was unplugged', async () => {
    const app = await testServer();
    const cook = await begin(app, 'rehearsal');
    const line = await serialLine();
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
  }, 20_000);
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

function hasPython(): boolean {
  try {
    execFileSync('python3', ['-c', 'import pty, tty']);
    return true;
  } catch {
    return false;
  }
}

/** Two ends of a serial line, made by the system (a pseudo-terminal): one has a name, the other writes what it is given. */
async function serialLine() {
  const program = [
    'import os, pty, sys, tty',
    'near, far = pty.openpty()',
    'tty.setraw(far)',
    'print(os.ttyname(far), flush=True)',
    'while True:',
    '  text = os.read(0, 4096)',
    '  if not text: break',
    '  os.write(near, text)',
  ].join('\n');
  const child = spawn('python3', ['-c', program]);
  onTestFinished(() => void child.kill());
  const port = await new Promise<string>((resolve) =>
    child.stdout.once('data', (text) => resolve(String(text).trim())),
  );
  return { port, write: (text: string) => void child.stdin.write(text), unplug: () => void child.kill() };
}
