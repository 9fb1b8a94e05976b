// Programs of other makers that stand in for a kitchen's instruments, for tests: MQTT clients, serial lines, a client of HTTP. Each ends with its test.
import { execFile, execFileSync, spawn } from 'node:child_process';
import { closeSync, openSync, writeSync } from 'node:fs';
import { createServer } from 'node:net';
import { promisify } from 'node:util';
import { Aedes } from 'aedes';
import { connectAsync } from 'mqtt';
import { onTestFinished, type TestContext } from 'vitest';

/** Skips the test, saying why, where the program is not installed. */
export function needs(program: string, { skip }: TestContext): void {
  skip(!isInstalled(program), `${program} is not installed here`);
}

function isInstalled(program: string): boolean {
  try {
    execFileSync('sh', ['-c', `command -v ${program}`]);
    return true;
  } catch {
    return false;
  }
}

interface Broker {
  readonly address: string;
  readonly signedIn: { readonly username: string; readonly password: string };
}

/** A broker on a port of its own, with one user. */
export async function broker(): Promise<Broker> {
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

/** A thermometer that publishes to one topic, and has left a will with the broker. */
export interface MqttPeer {
  /** A message that the broker keeps for whoever comes later. */
  keep(message: string): Promise<void>;
  publish(message: string): Promise<void>;
  /** Its connection breaks without a good-bye. */
  breakOff(): void;
}

export interface MqttWish {
  readonly topic: string;
  readonly will: { readonly topic: string; readonly message: string };
}

/** Another client of the library that the server uses itself. */
export async function libraryPeer({ address, signedIn }: Broker, { topic, will }: MqttWish): Promise<MqttPeer> {
  const last = { topic: will.topic, payload: Buffer.from(will.message), qos: 0 as const, retain: false };
  const client = await connectAsync(address, { ...signedIn, will: last });
  onTestFinished(() => client.endAsync(true).then(() => {}));
  return {
    keep: (message) => client.publishAsync(topic, message, { retain: true }).then(() => {}),
    publish: (message) => client.publishAsync(topic, message).then(() => {}),
    breakOff: () => void client.stream.destroy(),
  };
}

/** The client of the Mosquitto broker, as Debian has it: one process that publishes each line it is given. */
export async function mosquittoPeer({ address, signedIn }: Broker, { topic, will }: MqttWish): Promise<MqttPeer> {
  const { hostname, port } = new URL(address);
  const to = ['-h', hostname, '-p', port, '-u', signedIn.username, '-P', signedIn.password, '-t', topic];
  const child = spawn('mosquitto_pub', [...to, '-l', '--will-topic', will.topic, '--will-payload', will.message]);
  onTestFinished(() => void child.kill('SIGKILL'));
  return {
    keep: (message) => promisify(execFile)('mosquitto_pub', [...to, '-r', '-m', message]).then(() => {}),
    async publish(message) {
      child.stdin.write(`${message}\n`);
    },
    breakOff: () => void child.kill('SIGKILL'),
  };
}

/** A serial line: one end has a name, the other writes what it is given. */
export interface SerialLine {
  readonly port: string;
  write(text: string): void;
  unplug(): void;
}

/** A pseudo-terminal of Python's. */
export async function pythonLine(): Promise<SerialLine> {
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
  const [port] = await linesOf(child.stdout, /^(\/dev\/\S+)/, 1);
  return { port, write: (text) => void child.stdin.write(text), unplug: () => void child.kill() };
}

/** A pair of pseudo-terminals with socat between them, as a null-modem cable. */
export async function socatLine(): Promise<SerialLine> {
  const child = spawn('socat', ['-d', '-d', 'pty,raw,echo=0', 'pty,raw,echo=0']);
  const [near, port] = await linesOf(child.stderr, /PTY is (\S+)/, 2);
  const end = openSync(near, 'w');
  onTestFinished(() => {
    closeSync(end);
    child.kill();
  });
  return { port, write: (text) => void writeSync(end, text), unplug: () => void child.kill() };
}

/** What the first `count` lines that fit say; the stream is read on, so that its program is never held up. */
function linesOf(from: NodeJS.ReadableStream, pattern: RegExp, count: number): Promise<string[]> {
  let text = '';
  return new Promise((resolve, reject) => {
    from.on('data', (piece) => {
      text += String(piece);
      const found = text.split('\n').flatMap((line) => pattern.exec(line)?.[1] ?? []);
      if (found.length >= count) resolve(found);
    });
    from.on('end', () => reject(new Error(`it ended, having said: ${text}`)));
  });
}

/** @returns the answer's status and its body */
export async function curl(...args: readonly string[]): Promise<{ readonly status: number; readonly body: string }> {
  const { stdout } = await promisify(execFile)('curl', ['-s', '-w', '\n%{http_code}', ...args]);
  const end = stdout.lastIndexOf('\n');
  return { status: Number(stdout.slice(end + 1)), body: stdout.slice(0, end) };
}
