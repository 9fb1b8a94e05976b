/** Thermometers at a serial port of this device, from the page itself (W3C Community Group draft Web Serial). */
import { lineReader, textInLine } from '../../../../api/linePattern.ts';
import type { ReadingUnit } from '../../../../core/log/bodies.ts';
import type { Instrument } from './instrument.ts';

/** The parts of the browser's objects that are used. */
export interface Port {
  readonly readable: ReadableStream<Uint8Array> | null;
  open(options: { readonly baudRate: number }): Promise<void>;
  close(): Promise<void>;
}
export interface Serial {
  requestPort(): Promise<Port>;
}

export interface SerialForm {
  readonly baud: number;
  readonly pattern: string;
  readonly unit: ReadingUnit;
}

const againMs = 2000;

export function serialHere(): Serial | undefined {
  return (navigator as { serial?: Serial }).serial;
}

/** Has the person choose a port. @throws whatever the browser throws when none was chosen */
export async function chooseSerial(serial: Serial, { baud, pattern, unit }: SerialForm): Promise<Instrument> {
  const port = await serial.requestPort();
  const textIn = textInLine(pattern);
  return {
    name: 'Serial thermometer',
    listen(told, lost) {
      let stopped = false;
      let reader: ReadableStreamDefaultReader<Uint8Array> | undefined;
      let again: ReturnType<typeof setTimeout> | undefined;
      const take = lineReader((line) => {
        const raw = textIn(line);
        if (raw !== undefined) told({ raw, unit });
      });

      async function read() {
        await port.open({ baudRate: baud });
        if (!port.readable) throw new Error('the port can not be read');
        reader = port.readable.getReader();
        const decoder = new TextDecoder();
        for (let piece = await reader.read(); !piece.done && !stopped; piece = await reader.read()) {
          take(decoder.decode(piece.value, { stream: true }));
        }
      }
      async function follow() {
        await read().catch(() => {});
        reader?.releaseLock();
        await port.close().catch(() => {});
        if (stopped) return;
        lost('it was unplugged');
        again = setTimeout(() => void follow(), againMs);
      }
      void follow();
      return () => {
        stopped = true;
        clearTimeout(again);
        void reader?.cancel().catch(() => {});
      };
    },
  };
}
