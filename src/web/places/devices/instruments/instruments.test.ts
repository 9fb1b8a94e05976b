// Faithful stand-ins for the browser's objects: what a thermometer sends by the standard services and over a serial line.
import { expect, it } from 'vitest';
import { type BluetoothDevice, type Characteristic, chooseBluetooth, environmental, measurement } from './bluetooth.ts';
import type { Shown } from './instrument.ts';
import { chooseSerial } from './webSerial.ts';

const bytes = (...values: number[]) => new DataView(Uint8Array.from(values).buffer);

it.each([
  ['131.25 C', bytes(0x45, 0x33), 131.25],
  ['-10 C', bytes(0x18, 0xfc), -10],
  ['the highest, 327.67 C', bytes(0xff, 0x7f), 327.67],
  ['unknown', bytes(0x00, 0x80), null],
])('environmental sensing: %s', (_, value, raw) => {
  expect(environmental(value)).toEqual({ raw, unit: 'Cel' });
});

it.each([
  ['36.5 C', bytes(0x00, 0x6d, 0x01, 0x00, 0xff), { raw: 36.5, unit: 'Cel' }],
  ['268.7 F, with a time behind', bytes(0x03, 0x7f, 0x0a, 0x00, 0xff, 0xe7), { raw: 268.7, unit: '[degF]' }],
  ['-4 C', bytes(0x00, 0xfc, 0xff, 0xff, 0x00), { raw: -4, unit: 'Cel' }],
  ['120 C as 12 tens', bytes(0x00, 0x0c, 0x00, 0x00, 0x01), { raw: 120, unit: 'Cel' }],
  ['not a number', bytes(0x00, 0xff, 0xff, 0x7f, 0x00), { raw: null, unit: 'Cel' }],
  ['not at this resolution', bytes(0x00, 0x00, 0x00, 0x80, 0x00), { raw: null, unit: 'Cel' }],
  ['infinite', bytes(0x00, 0xfe, 0xff, 0x7f, 0x00), { raw: null, unit: 'Cel' }],
])('health thermometer: %s', (_, value, shown) => {
  expect(measurement(value)).toEqual(shown);
});

/** A device with one service, that tells by itself or only answers. */
function device(service: string, tells: boolean) {
  const events = new EventTarget();
  const characteristic = Object.assign(events, {
    value: undefined as DataView | undefined,
    startNotifications: async () => {
      if (!tells) throw new Error('not supported');
      return characteristic as unknown as Characteristic;
    },
    readValue: async () => bytes(0, 0),
    tell(value: DataView) {
      characteristic.value = value;
      events.dispatchEvent(new Event('characteristicvaluechanged'));
    },
  });
  let connections = 0;
  const stub = Object.assign(new EventTarget(), {
    name: 'Probe 7',
    gatt: {
      connect: async () => {
        connections += 1;
        return {
          getPrimaryService: async (name: string) => {
            if (name !== service) throw new Error('no such service');
            return { getCharacteristic: async () => characteristic as unknown as Characteristic };
          },
        };
      },
      disconnect: () => {},
    },
  });
  return { stub: stub as unknown as BluetoothDevice, characteristic, connections: () => connections };
}

const soon = () => new Promise((resolve) => setTimeout(resolve, 5));

it('listens to a Bluetooth thermometer, says when it is gone, and comes back to it', async () => {
  const { stub, characteristic, connections } = device('health_thermometer', true);
  const asked: object[] = [];
  const instrument = await chooseBluetooth({
    requestDevice: async (options) => {
      asked.push(options);
      return stub;
    },
  });
  expect(asked).toEqual([{ filters: [{ services: ['environmental_sensing'] }, { services: ['health_thermometer'] }] }]);
  const heard: Shown[] = [];
  const lost: string[] = [];
  const stop = instrument.listen(
    (shown) => heard.push(shown),
    (reason) => lost.push(reason),
  );
  await soon();
  characteristic.tell(bytes(0x00, 0x6d, 0x01, 0x00, 0xff));
  expect(heard).toEqual([{ raw: 36.5, unit: 'Cel' }]);
  stub.dispatchEvent(new Event('gattserverdisconnected'));
  expect(lost).toEqual(['the connection broke']);
  await expect.poll(connections, { timeout: 4000 }).toBe(2);
  stop();
  characteristic.tell(bytes(0x00, 0x6d, 0x01, 0x00, 0xff));
  expect(heard).toHaveLength(1);
});

it('listens to lines of a serial thermometer, and opens it again after it was unplugged', async () => {
  let opened = 0;
  const port = {
    readable: null as ReadableStream<Uint8Array> | null,
    async open() {
      opened += 1;
      const text = new TextEncoder();
      port.readable = new ReadableStream({
        start(controller) {
          for (const piece of ['T=13', '1.5\nT=--\nnoise\n']) controller.enqueue(text.encode(piece));
          controller.close();
        },
      });
    },
    async close() {},
  };
  const form = { baud: 9600, pattern: 'T={}', unit: 'Cel' } as const;
  const instrument = await chooseSerial({ requestPort: async () => port }, form);
  const heard: (number | string | null)[] = [];
  const stop = instrument.listen(
    ({ raw }) => heard.push(raw),
    () => {},
  );
  await soon();
  expect(heard).toEqual(['131.5', '--']);
  await expect.poll(() => opened, { timeout: 4000 }).toBe(2);
  stop();
});
