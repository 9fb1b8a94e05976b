// Thermometers of other makers, or what stands in for them, feed a cook in a real browser: declared on the page, tried there, seen at the Stove, kept in the log.
import { execFile } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { promisify } from 'node:util';
import type { Page } from 'playwright-core';
import { describe, expect, it, onTestFinished } from 'vitest';
import type { InputList } from '../../src/api/input.ts';
import type { LogEvent } from '../../src/core/log/event.ts';
import { defaultKit } from '../../src/core/pan/kit.ts';
import { cookedLog } from '../cookedLog.ts';
import { broker, curl, mosquittoPeer, needs, socatLine } from '../peers.ts';
import { sampleDevice, startMs } from '../sampleCook.ts';
import { scratchFolder } from '../testServer.ts';
import { type BuiltServer, startBuiltServer } from './builtServer.ts';
import { lanServerFlags, onLan } from './lan.ts';
import { objections } from './objections.ts';
import { noBrowser, pages, says } from './openPage.ts';
import { logOf, startCook } from './startCook.ts';

/** What is declared of a thermometer, as people type it, and how it is then made to send. */
interface Peer {
  readonly fields: Readonly<Record<string, string>>;
  send(celsius: number): Promise<void> | void;
}

async function byMosquitto(): Promise<Peer> {
  const there = await broker();
  const { username, password } = there.signedIn;
  const will = { topic: 'kitchen/pan/state', message: 'offline' };
  const peer = await mosquittoPeer(there, { topic: 'kitchen/pan', will });
  const fields = { Broker: there.address, User: username, Password: password, Topic: 'kitchen/pan' };
  return {
    fields: { ...fields, 'Where in the message': 'probes.0.t', 'It sends': '°F' },
    send: (celsius) => peer.publish(JSON.stringify({ probes: [{ t: 1.8 * celsius + 32 }] })),
  };
}

/** To a server that was started with a broker of its own. */
async function byOwnBroker({ address }: BuiltServer): Promise<Peer> {
  const { broker } = (await (await fetch(`${address}api/inputs`)).json()) as InputList;
  const { port } = new URL(broker?.[0] ?? '');
  const publish = (message: string) =>
    promisify(execFile)('mosquitto_pub', ['-h', '127.0.0.1', '-p', port, '-t', 'kitchen/pan', '-m', message]);
  return {
    fields: { 'How it comes': 'By MQTT, to Umberpan itself', Topic: 'kitchen/pan' },
    send: async (celsius) => void (await publish(String(celsius))),
  };
}

async function bySocat(): Promise<Peer> {
  const { port, write } = await socatLine();
  const fields = { 'How it comes': 'At a serial port of the server', Port: port, 'A line of it': 'T={} C*' };
  return { fields, send: (celsius) => write(`T=${celsius} C ok\r\n`) };
}

async function declare(page: Page, fields: Peer['fields']) {
  await page.getByRole('button', { name: 'Add a thermometer' }).click();
  for (const [label, text] of Object.entries({ ...fields, Name: 'Kitchen probe', 'Every, s': '0.2' })) {
    const input = page.locator('.input-list + .devices-form').getByLabel(label, { exact: true });
    const isChoice = await input.evaluate((each) => each.matches('select'));
    await (isChoice ? input.selectOption({ label: text }) : input.fill(text));
  }
  await page.getByRole('button', { name: 'Listen to it' }).click();
}

async function readings(server: BuiltServer, cook: string) {
  return (await logOf(server, cook)).flatMap(({ kind, body }) => (kind === 'reading' ? [body] : []));
}

/** A thermometer of the page's own device; what it sends is told by `tell`. */
type InPage = Window & { tell(value: number[]): void; breakOff(): void };
const tell = (page: Page, value: readonly number[]) =>
  page.evaluate((bytes) => (window as unknown as InPage).tell(bytes), [...value]);
const breakOff = (page: Page) => page.evaluate(() => (window as unknown as InPage).breakOff());

/** The browser's objects for a Bluetooth thermometer with the service of environmental sensing. */
function bluetoothInPage() {
  const characteristic = Object.assign(new EventTarget(), {
    value: undefined as DataView | undefined,
    startNotifications: async () => characteristic,
  });
  const service = { getCharacteristic: async () => characteristic };
  let connected = false;
  const gatt = {
    async connect() {
      connected = true;
      return { getPrimaryService: async () => service };
    },
    disconnect: () => {},
  };
  const device = Object.assign(new EventTarget(), { name: 'Probe 7', gatt });
  Object.defineProperty(navigator, 'bluetooth', { value: { requestDevice: async () => device } });
  Object.assign(window, {
    tell(value: number[]) {
      if (!connected) throw new Error('not connected');
      characteristic.value = new DataView(Uint8Array.from(value).buffer);
      characteristic.dispatchEvent(new Event('characteristicvaluechanged'));
    },
    breakOff() {
      connected = false;
      device.dispatchEvent(new Event('gattserverdisconnected'));
    },
  });
}

/** The browser's objects for a thermometer that writes lines to a serial port. */
function serialInPage() {
  let lines: ReadableStreamDefaultController<Uint8Array>;
  const port = {
    readable: null as ReadableStream<Uint8Array> | null,
    async open() {
      port.readable = new ReadableStream({
        start(controller) {
          lines = controller;
        },
      });
    },
    async close() {},
  };
  Object.defineProperty(navigator, 'serial', { value: { requestPort: async () => port } });
  Object.assign(window, {
    tell: (value: number[]) => lines.enqueue(Uint8Array.from(value)),
    breakOff: () => lines.close(),
  });
}

/** The first minutes of a cook that goes on now, in which a second thermometer shows 6 K more than the first. */
function withTwo(minutes: number) {
  const cook = randomUUID();
  const { events } = cookedLog(defaultKit, 4, 'live', cook);
  const second = sampleDevice(cook);
  const beganMs = Date.now() - minutes * 60_000;
  const soFar = events.filter(({ tDevice }) => Date.parse(tDevice) - startMs < minutes * 60_000);
  const readings = soFar.flatMap(({ kind, body, tDevice }) =>
    kind === 'reading' && body.valueC !== null ? [{ body, valueC: body.valueC, tDevice }] : [],
  );
  const beside = readings.map(({ body, valueC, tDevice }) =>
    second.make(
      'reading',
      { ...body, probe: 'second', valueC: valueC + 6, raw: valueC + 6 },
      (Date.parse(tDevice) - startMs) / 1000,
    ),
  );
  const asOfNow = (event: LogEvent) => ({
    ...event,
    tDevice: new Date(Date.parse(event.tDevice) - startMs + beganMs).toISOString(),
  });
  const [begun, ...rest] = [...soFar, ...beside].map(asOfNow);
  return { cook, begun, rest, lastC: readings.at(-1)?.valueC ?? Number.NaN };
}

const bytesOf = (text: string) => [...new TextEncoder().encode(text)];

describe.skipIf(noBrowser)('a thermometer', () => {
  const open = pages();

  it.for([
    ['mosquitto_pub', 'by a broker', byMosquitto],
    ['mosquitto_pub', 'by Umberpan’s own broker', byOwnBroker],
    ['socat', 'at a serial port', bySocat],
  ] as const)(
    'that %s stands in for, %s, is declared, tried before the cook, and feeds it',
    async ([program, _, start], context) => {
      needs(program, context);
      const on = await startBuiltServer(scratchFolder(), 0, [...(onLan ? lanServerFlags : []), '--broker', '0']);
      onTestFinished(async () => void (await on.end('SIGTERM')));
      const { page, server, complaints } = await open({ at: 'devices', on });
      const peer = await start(on);
      await declare(page, peer.fields);
      await says(page, '.input-list', /Connected, nothing heard yet/);
      await peer.send(100);
      await says(page, '.input-last', /100\.0 °C/);
      await says(page, '.input-list', /Hearing it\. No cook is going on\./);

      await page.goto('/stove/cook');
      const cook = await startCook(page);
      await says(page, '[data-role=link]', /All is on the server/);
      await peer.send(23.5);
      await says(page, '.glance-detail', /Thermometer: 23\.5 °C/);
      await says(page, '[data-role=mode]', /Live, with a thermometer/);
      expect(await readings(server, cook)).toMatchObject([{ probe: 'pan', valueC: expect.closeTo(23.5, 6) }]);
      expect(complaints).toEqual([]);
    },
  );

  it.each([
    // Hundredths of a degree, low byte first: 2150 and 2225.
    ['Bluetooth', bluetoothInPage, 'Bluetooth thermometer', 'Probe 7', [0x66, 0x08], [0xb1, 0x08]],
    ['a serial port', serialInPage, 'Choose its port', 'Serial thermometer', bytesOf('21.5\n'), bytesOf('22.25\n')],
  ] as const)(
    'of the page’s own device, by %s, feeds the cook, also after it broke off',
    async (_, stub, button, probe, first, second) => {
      const { page, server, complaints } = await open();
      await page.addInitScript(stub);
      await page.goto('/stove/cook');
      const cook = await startCook(page);
      await page.getByText('A thermometer that sends by itself').click();
      if (stub === serialInPage) await page.getByText('Serial thermometer', { exact: true }).click();
      await page.getByRole('button', { name: button }).click();
      const line = page.locator('.connect-instrument [role=status]');
      await line.getByText('waiting for a reading').waitFor();
      await tell(page, first);
      await line.getByText('21.5 °C').waitFor();
      await says(page, '.glance-detail', /Thermometer: 21\.5 °C/);
      await breakOff(page);
      await line.getByText('looking for it again').waitFor();
      // It is looked for until it is there, and then heard again.
      await expect
        .poll(async () => {
          await tell(page, second).catch(() => {});
          return line.textContent();
        })
        .toContain('22.3 °C');
      await says(page, '[data-role=link]', /All is on the server/);
      await expect
        .poll(() => readings(server, cook))
        .toMatchObject([
          { probe, valueC: 21.5 },
          { probe, valueC: 22.25 },
        ]);
      expect(complaints).toEqual([]);
    },
  );

  it('that shows another temperature than a second one is asked about, until the cook says which is right', async (context) => {
    needs('curl', context);
    const { page, server, complaints } = await open({ ownServer: true, viewport: { width: 360, height: 780 } });
    const { cook, begun, rest, lastC } = withTwo(4);
    const post = (path: string, type: string, text: string) =>
      curl('-H', `content-type: ${type}`, '-d', text, `${server.address}api/${path}`);
    expect((await post('cooks', 'application/json', JSON.stringify(begun))).status).toBe(201);
    expect((await post(`cooks/${cook}/events`, 'application/json', JSON.stringify(rest))).status).toBe(201);
    await page.goto(`/stove/cook/${cook}`);
    const strip = page.locator('.alarm-strip');
    /** Both go on sending, and the second as far off as before. */
    const bothSend = async () => {
      for (const [probe, celsius] of [
        ['simulated', lastC],
        ['second', lastC + 6],
      ] as const)
        await post(`readings?unit=C&cook=${cook}&probe=${probe}`, 'text/plain', String(celsius));
    };
    await expect
      .poll(() => bothSend().then(() => strip.textContent()), { timeout: 90_000, interval: 2000 })
      .toMatch(/Two thermometers disagree/);
    const shown = (probe: string) => strip.getByRole('button', { name: new RegExp(`^\\d+ °C is right ${probe}$`) });
    const [first, second] = await Promise.all(
      ['simulated', 'second'].map(async (probe) => Number.parseInt((await shown(probe).textContent()) ?? '', 10)),
    );
    expect(Math.abs((second ?? 0) - (first ?? 0) - 6)).toBeLessThanOrEqual(1);
    await says(page, '.glance-detail', /Two thermometers: “simulated” .*, “second” /);
    expect(await objections(page)).toEqual([]);

    await page.waitForTimeout(300);
    await shown('simulated').click();
    await expect
      .poll(() => bothSend().then(() => strip.textContent()), { timeout: 60_000, interval: 2000 })
      .not.toMatch(/Two thermometers disagree/);
    await says(page, '[data-role=link]', /All is on the server/);
    const answered = (await logOf(server, cook)).filter(({ kind }) => kind === 'vouched');
    expect(answered).toMatchObject([{ body: { probe: 'simulated' } }]);
    expect(complaints).toEqual([]);
  });
});
