// Umberpan's own broker, used by another maker's client: what it lets through, from whom, and what it keeps of nobody.
import { execFile } from 'node:child_process';
import { connect } from 'node:net';
import { networkInterfaces } from 'node:os';
import { promisify } from 'node:util';
import { connectAsync } from 'mqtt';
import { expect, it, onTestFinished, type TestContext } from 'vitest';
import { listeningServer } from '../../../test/liveServer.ts';
import { needs } from '../../../test/peers.ts';
import { sampleCook, sampleDevice } from '../../../test/sampleCook.ts';
import { scratchFolder } from '../../../test/testServer.ts';
import type { DeviceRole, Invitation } from '../../api/device.ts';
import type { InputList, InputRecord } from '../../api/input.ts';
import type { Reading } from '../../core/log/bodies.ts';
import type { StampedEvent } from '../../core/log/event.ts';
import { certificateFor, makeAuthority } from '../devices/trust.ts';
import type { ServerOptions } from '../server.ts';
import type { OwnBroker } from './ownBroker.ts';

const run = promisify(execFile);

async function brokered(host = '127.0.0.1', options: Partial<ServerOptions> = {}) {
  let own: OwnBroker | undefined;
  const broker = { host, port: 0, opened: (opened: OwnBroker) => (own = opened) };
  const { app, address } = await listeningServer(scratchFolder(), { broker, ...options });
  const { port } = own as OwnBroker;
  const headers = { host: new URL(address).host };
  const ask = async (url: string, payload?: object, method: 'POST' | 'PUT' | 'DELETE' = 'POST') =>
    (await app.inject({ url, headers, ...(payload && { method, payload }) })).json();
  const inputs = async () => (await ask('/api/inputs')) as InputList;
  const status = async () => (await inputs()).inputs[0]?.status as InputRecord['status'];
  await ask('/api/inputs', {
    kind: 'mqtt',
    name: 'Pan',
    probe: 'pan',
    unit: 'Cel',
    everyS: 0.2,
    on: true,
    broker: 'own',
    topic: 'kitchen/pan',
    path: '',
    goneTopic: 'kitchen/pan/state',
  });
  await expect.poll(async () => (await status()).state).toBe('waiting');
  const begin = async () => {
    const { cook, begun } = sampleCook();
    await ask('/api/cooks', begun);
    return cook;
  };
  const end = (cook: string) => ask(`/api/cooks/${cook}/events`, sampleDevice(cook).make('ended', { how: 'done' }, 1));
  const readings = async (cook: string) =>
    ((await ask(`/api/cooks/${cook}/events`)) as { events: StampedEvent[] }).events.flatMap(({ kind, body }) =>
      kind === 'reading' ? [(body as Reading).raw] : [],
    );
  const pair = async (role: DeviceRole, terms: Partial<Invitation> = {}) => {
    const { code } = await ask('/api/invitations', { role, ...terms });
    return (await ask('/api/pairing', { code, name: 'Board' })) as { token: string; device: { id: string } };
  };
  return { port, ask, inputs, status, begin, end, readings, pair };
}

/** An address of this machine by which it is asked as from the network. */
function networkAddress({ skip }: TestContext): string {
  const found = Object.values(networkInterfaces())
    .flatMap((all) => all ?? [])
    .find(({ internal, family }) => !internal && family === 'IPv4');
  skip(!found, 'this machine is in no network');
  return found?.address ?? '';
}

const publish = (host: string, port: number, message: string, ...more: readonly string[]) =>
  run('mosquitto_pub', ['-h', host, '-p', String(port), '-t', 'kitchen/pan', '-m', message, ...more]);

const closed = (connection: { once(event: 'close', done: () => void): unknown }) =>
  new Promise<void>((resolve) => connection.once('close', resolve));

/** Longer than the interval that was declared. */
const pause = () => new Promise((resolve) => setTimeout(resolve, 150));

it('takes from this machine what mosquitto_pub publishes, at each quality of service, into the cook', async (context) => {
  needs('mosquitto_pub', context);
  const { port, begin, readings, status, inputs } = await brokered();
  expect((await inputs()).broker).toEqual([`mqtt://127.0.0.1:${port}`]);
  await publish('127.0.0.1', port, '99.5');
  await expect.poll(async () => (await status()).last[0]).toMatchObject({ raw: '99.5', valueC: 99.5 });
  expect((await status()).cook).toBeNull();
  const cook = await begin();
  for (const qos of ['0', '1', '2']) {
    await pause();
    await publish('127.0.0.1', port, `13${qos}`, '-q', qos);
  }
  await expect.poll(() => readings(cook)).toEqual([130, 131, 132]);
  await pause();
  await publish('127.0.0.1', port, '133', '-r');
  await expect.poll(() => readings(cook)).toHaveLength(4);
}, 20_000);

it('keeps nothing and tells nobody: no retained message, no subscription, and the will of who broke off', async () => {
  const { port, status } = await brokered();
  const address = `mqtt://127.0.0.1:${port}`;
  const last = { topic: 'kitchen/pan/state', payload: Buffer.from('offline'), qos: 0 as const, retain: true };
  const sender = await connectAsync(address, { will: last });
  const other = await connectAsync(address);
  onTestFinished(() => void sender.end(true));
  onTestFinished(() => void other.end(true));
  await sender.publishAsync('kitchen/pan', '131', { retain: true });
  const heard: string[] = [];
  other.on('message', (topic) => void heard.push(topic));
  const granted = await new Promise((resolve) => {
    other.on('packetreceive', (packet) => packet.cmd === 'suback' && resolve(packet.granted));
    other.subscribe(['#', 'kitchen/pan', '$SYS/#'], () => {});
  });
  expect(granted).toEqual([128, 128, 128]);
  await pause();
  await sender.publishAsync('kitchen/pan', '132');
  await sender.publishAsync('kitchen/elsewhere', 'x');
  await expect.poll(async () => (await status()).heard).toBe(2);
  sender.stream.destroy();
  await expect.poll(async () => (await status()).state).toBe('gone');
  expect(heard).toEqual([]);
}, 20_000);

it('wants a thermometer’s token from the network: none, a wrong one and a guest’s are refused', async (context) => {
  needs('mosquitto_pub', context);
  const address = networkAddress(context);
  const { port, begin, readings, pair } = await brokered('0.0.0.0');
  const cook = await begin();
  const probe = await pair('probe', { cook });
  const guest = await pair('reader');
  const from = (host: string, ...more: readonly string[]) => publish(host, port, '131', ...more);
  await expect(from(address)).rejects.toThrow(/not authori[sz]ed|bad user/i);
  for (const host of [address, '127.0.0.1'])
    for (const wrong of ['plum', guest.token])
      await expect(from(host, '-u', 'board', '-P', wrong)).rejects.toThrow(/bad user/i);
  expect(await readings(cook)).toEqual([]);
  await from(address, '-u', 'board', '-P', probe.token);
  await expect.poll(() => readings(cook)).toEqual([131]);
}, 20_000);

it('lets a token send into its one cook; asleep, it is heard and writes nothing; let out, it is cut off', async () => {
  const { port, ask, begin, end, readings, pair, status } = await brokered();
  const [first, second] = [await begin(), await begin()];
  const { token, device } = await pair('probe', { cook: first });
  const board = await connectAsync(`mqtt://127.0.0.1:${port}`, {
    username: 'board',
    password: token,
    reconnectPeriod: 0,
  });
  onTestFinished(() => void board.end(true));
  const send = async (value: string) => {
    await pause();
    await board.publishAsync('kitchen/pan', value);
    await expect.poll(async () => (await status()).last[0]?.raw).toBe(value);
  };
  await send('131');
  await expect.poll(() => readings(first)).toEqual([131]);
  expect((await status()).cook?.id).toBe(first);
  await end(first);
  await send('132');
  await expect.poll(async () => (await status()).reason).toMatch(/^Board is asleep/);
  expect((await status()).cook).toBeNull();
  expect([await readings(first), await readings(second)]).toEqual([[131], []]);
  await ask(`/api/devices/${device.id}/cook`, { cook: second }, 'PUT');
  await send('133');
  await expect.poll(() => readings(second)).toEqual([133]);
  const cut = closed(board);
  await ask('/api/devices', {}, 'DELETE').catch(() => {});
  await cut;
}, 20_000);

it.each([
  ['a topic of its own', (port: number) => publishRaw(port, '$SYS/x/new/clients', Buffer.from('1'))],
  ['a packet of 10 MB', (port: number) => publishRaw(port, 'kitchen/pan', Buffer.alloc(10e6, '1'))],
  ['a page that posts to it', (port: number) => post(port)],
  ['200 messages at a time', (port: number) => flood(port)],
] as const)(
  'cuts off %s, and serves others on',
  async (_, attack) => {
    const { port, begin, readings } = await brokered();
    const cook = await begin();
    const before = process.memoryUsage().rss;
    await attack(port);
    // Counted by whole seconds.
    await new Promise((resolve) => setTimeout(resolve, 1100));
    expect(process.memoryUsage().rss - before).toBeLessThan(50e6);
    expect((await readings(cook)).length).toBeLessThanOrEqual(5);
    const other = await connectAsync(`mqtt://127.0.0.1:${port}`);
    onTestFinished(() => void other.end(true));
    await other.publishAsync('kitchen/pan', '77');
    await expect.poll(async () => (await readings(cook)).at(-1)).toBe(77);
  },
  20_000,
);

async function publishRaw(port: number, topic: string, message: Buffer) {
  const client = await connectAsync(`mqtt://127.0.0.1:${port}`, { reconnectPeriod: 0 });
  client.on('error', () => {});
  const cut = closed(client);
  client.publish(topic, message);
  await cut;
}

/** What a browser would send for another site: HTTP, with MQTT in its body. */
async function post(port: number) {
  const socket = connect(port, '127.0.0.1');
  socket.on('error', () => {});
  socket.write('POST / HTTP/1.1\r\nHost: x\r\nContent-Length: 16\r\n\r\n');
  await closed(socket);
}

async function flood(port: number) {
  const client = await connectAsync(`mqtt://127.0.0.1:${port}`, { reconnectPeriod: 0 });
  client.on('error', () => {});
  const cut = closed(client);
  for (let n = 0; n < 250; n++) client.publish('kitchen/pan', String(n));
  await cut;
}

it('is encrypted where the server is, by the home’s own authority', async (context) => {
  needs('mosquitto_pub', context);
  const data = scratchFolder();
  const now = new Date();
  const authority = await makeAuthority(data, now);
  const tls = await certificateFor(authority, ['localhost'], now);
  const { port, status, inputs } = await brokered('127.0.0.1', { tls });
  expect((await inputs()).broker).toEqual([`mqtts://127.0.0.1:${port}`]);
  await publish('localhost', port, '99.5', '--cafile', authority.file);
  await expect.poll(async () => (await status()).last[0]?.raw).toBe('99.5');
  const stranger = await makeAuthority(scratchFolder(), now);
  await expect(publish('localhost', port, '98', '--cafile', stranger.file)).rejects.toThrow(/TLS|certificate/i);
  await expect(publish('localhost', port, '97')).rejects.toThrow();
  expect((await status()).heard).toBe(1);
}, 20_000);

it('stops at once, whoever is connected and says nothing', async () => {
  let own: OwnBroker | undefined;
  const broker = { host: '127.0.0.1', port: 0, opened: (opened: OwnBroker) => (own = opened) };
  const { stop } = await listeningServer(scratchFolder(), { broker });
  const silent = connect(own?.port ?? 0, '127.0.0.1');
  await new Promise((resolve) => silent.once('connect', resolve));
  const signedIn = await connectAsync(`mqtt://127.0.0.1:${own?.port}`, { reconnectPeriod: 0 });
  onTestFinished(() => void signedIn.end(true));
  const [cut, left] = [closed(silent), closed(signedIn)];
  const begunMs = performance.now();
  await stop();
  await Promise.all([cut, left]);
  expect(performance.now() - begunMs).toBeLessThan(2000);
});

it('says what to do when there is no broker to publish to', async () => {
  const { app } = await listeningServer(scratchFolder());
  const { host } = new URL('http://localhost');
  const headers = { host: `${host}:${(app.server.address() as { port: number }).port}` };
  const payload = {
    kind: 'mqtt',
    name: 'x',
    probe: 'x',
    unit: 'Cel',
    everyS: 1,
    on: true,
    broker: 'own',
    topic: 'x',
    path: '',
  };
  await app.inject({ method: 'POST', url: '/api/inputs', payload, headers });
  const listed = async () => (await app.inject({ url: '/api/inputs', headers })).json() as InputList;
  await expect
    .poll(async () => (await listed()).inputs[0]?.status)
    .toMatchObject({ state: 'failing', reason: expect.stringContaining('serve --broker') });
  expect((await listed()).broker).toBeNull();
});
