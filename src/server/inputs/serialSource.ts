/** Listens to a thermometer or a thermocouple board at a serial port that writes a line for each reading. */
import { readdir } from 'node:fs/promises';
import type { SerialPort } from 'serialport';
import type { SerialInput } from '../../api/input.ts';
import { lineReader, textInLine } from '../../api/linePattern.ts';
import type { Source, SourceListener } from './source.ts';

/** A plug that was pulled is put back when somebody notices, ms. */
const againMs = 2000;

export async function serialSource(input: SerialInput, told: SourceListener): Promise<Source> {
  const { SerialPort } = await import('serialport');
  const textIn = textInLine(input.pattern);
  let port: SerialPort | undefined;
  let again: NodeJS.Timeout | undefined;
  let stopped = false;

  function open() {
    told.state('connecting');
    const opened = new SerialPort({ path: input.port, baudRate: input.baud, autoOpen: false });
    port = opened;
    const read = lineReader((line) => {
      const text = textIn(line);
      if (text === undefined) told.passedOver(`a line of another form: ${line}`);
      else told.value(text);
    });
    opened.on('data', (piece: Buffer) => read(piece.toString('latin1')));
    opened.on('error', (error: Error) => fail(error.message));
    opened.on('close', () => fail('it was unplugged, or closed'));
    opened.open((error) => (error ? fail(error.message) : told.state('waiting')));
  }

  function fail(reason: string) {
    if (stopped) return;
    told.state('failing', `${input.port}: ${reason.replace(/^Error: /, '')}`);
    clearTimeout(again);
    again = setTimeout(open, againMs);
  }

  open();
  return {
    stop() {
      stopped = true;
      clearTimeout(again);
      return new Promise((resolve) => (port?.isOpen ? port.close(() => resolve()) : resolve()));
    },
  };
}

/** The serial ports of this machine. */
export async function serialPorts(): Promise<{ port: string; name: string | null }[]> {
  const { SerialPort } = await import('serialport');
  try {
    const ports = await SerialPort.list();
    return ports.map(({ path, manufacturer }) => ({ port: path, name: manufacturer ?? null }));
  } catch {
    // A Linux without udev names no makers, but has its ports.
    const names = await readdir('/dev').catch(() => []);
    return names
      .filter((name) => /^tty(USB|ACM|AMA)\d+$/.test(name))
      .map((name) => ({ port: `/dev/${name}`, name: null }));
  }
}
