/**
 * Thermometers by Bluetooth, from the page itself: the two standard services that show a temperature (Bluetooth SIG assigned
 * numbers: Environmental Sensing 0x181A with Temperature 0x2A6E, Health Thermometer 0x1809 with Temperature Measurement
 * 0x2A1C; numbers and formats from memory, checked in the tests on values worked by hand from the formats).
 */
import type { ReadingUnit } from '../../../../core/log/bodies.ts';
import type { Instrument, Shown } from './instrument.ts';

/** The parts of the browser's objects that are used (W3C Community Group draft Web Bluetooth). */
export interface Characteristic extends EventTarget {
  readonly value?: DataView;
  readValue(): Promise<DataView>;
  startNotifications(): Promise<Characteristic>;
}
export interface BluetoothDevice extends EventTarget {
  readonly name?: string;
  readonly gatt: {
    connect(): Promise<{
      getPrimaryService(name: string): Promise<{ getCharacteristic(name: string): Promise<Characteristic> }>;
    }>;
    disconnect(): void;
  };
}
export interface Bluetooth {
  requestDevice(options: object): Promise<BluetoothDevice>;
}

const services = [
  { service: 'environmental_sensing', characteristic: 'temperature', read: environmental },
  { service: 'health_thermometer', characteristic: 'temperature_measurement', read: measurement },
] as const;
/** Where a sensor does not tell by itself it is asked this often, ms. */
const askEveryMs = 2000;
const againMs = 2000;

export function bluetoothHere(): Bluetooth | undefined {
  return (navigator as { bluetooth?: Bluetooth }).bluetooth;
}

/** Has the person choose a thermometer. @throws whatever the browser throws when nothing was chosen or nothing answers */
export async function chooseBluetooth(bluetooth: Bluetooth): Promise<Instrument> {
  const device = await bluetooth.requestDevice({ filters: services.map(({ service }) => ({ services: [service] })) });
  return { name: device.name || 'Bluetooth thermometer', listen: (told, lost) => listen(device, told, lost) };
}

function listen(device: BluetoothDevice, told: (shown: Shown) => void, lost: (reason: string) => void): () => void {
  let stopped = false;
  let asking: ReturnType<typeof setInterval> | undefined;
  let again: ReturnType<typeof setTimeout> | undefined;

  async function connect() {
    const { characteristic, read } = await found(device);
    if (stopped) return;
    characteristic.addEventListener('characteristicvaluechanged', () => {
      if (!stopped && characteristic.value) told(read(characteristic.value));
    });
    try {
      await characteristic.startNotifications();
    } catch {
      asking = setInterval(() => characteristic.readValue().catch(() => {}), askEveryMs);
    }
  }
  function comeBack() {
    clearInterval(asking);
    // It may break while it is being connected, which is told twice.
    clearTimeout(again);
    if (stopped) return;
    lost('the connection broke');
    again = setTimeout(() => connect().catch(comeBack), againMs);
  }

  device.addEventListener('gattserverdisconnected', comeBack);
  connect().catch(comeBack);
  return () => {
    stopped = true;
    clearInterval(asking);
    clearTimeout(again);
    device.removeEventListener('gattserverdisconnected', comeBack);
    device.gatt.disconnect();
  };
}

async function found(device: BluetoothDevice) {
  const server = await device.gatt.connect();
  let trouble: unknown;
  for (const { service, characteristic, read } of services) {
    try {
      const there = await (await server.getPrimaryService(service)).getCharacteristic(characteristic);
      return { characteristic: there, read };
    } catch (error) {
      trouble = error;
    }
  }
  throw trouble;
}

/** Hundredths of a degree Celsius, 16 bits with sign; the lowest of them stands for unknown. */
export function environmental(value: DataView): Shown {
  const hundredths = value.getInt16(0, true);
  return { raw: hundredths === -0x8000 ? null : hundredths / 100, unit: 'Cel' };
}

/** A byte of flags, whose lowest bit says Fahrenheit, then a number of 24 bits and a power of ten of 8 (IEEE 11073-20601 FLOAT). */
export function measurement(value: DataView): Shown {
  const unit: ReadingUnit = value.getUint8(0) & 1 ? '[degF]' : 'Cel';
  const mantissa = (value.getUint32(1, true) << 8) >> 8;
  // Not a number, infinities, not at this resolution, reserved.
  if (mantissa >= 0x7ffffe || mantissa <= -0x7ffffe) return { raw: null, unit };
  const exponent = value.getInt8(4);
  // By division where it is one: 365 / 10 is 36.5, and 365 * 0.1 is not.
  return { raw: exponent < 0 ? mantissa / 10 ** -exponent : mantissa * 10 ** exponent, unit };
}
