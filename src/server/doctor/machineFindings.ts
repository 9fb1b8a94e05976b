/** The machine: its Node, the port, how it is reached, the authority, and the thermometers of a server that runs. */
import { once } from 'node:events';
import { get as getPlain, type IncomingMessage } from 'node:http';
import { get as getEncrypted, type RequestOptions } from 'node:https';
import { createServer } from 'node:net';
import { text } from 'node:stream/consumers';
import type { InputList } from '../../api/input.ts';
import { namesOnNetwork } from '../devices/addresses.ts';
import { readAuthority } from '../devices/trust.ts';
import { serialPorts } from '../inputs/serialSource.ts';
import { type Finding, mind, well, wrong } from './finding.ts';

/** As package.json asks for. */
const leastNode = [20, 19] as const;
const soonMs = 30 * 86_400_000;
const patienceMs = 2000;

export function nodeFinding(version = process.versions.node): Finding {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  const enough = major > leastNode[0] || (major === leastNode[0] && minor >= leastNode[1]);
  return enough ? well('Node', version) : wrong('Node', version, `Install ${leastNode.join('.')} or later.`);
}

/** A server of this machine, and the authority that it may have an encrypted connection by. */
export interface Asked {
  readonly port: number;
  readonly cert: string | undefined;
}

/** Asks who is at the port: Umberpan, nobody, or another program. */
export async function portFinding(at: Asked): Promise<{ finding: Finding; running: boolean }> {
  const { port } = at;
  const name = `Port ${port}`;
  const health = await answer<{ version: string }>(at, 'health');
  if (health?.version) return { finding: well(name, `Umberpan ${health.version} listens there`), running: true };
  const free = await isFree(port);
  const finding = free
    ? well(name, 'free')
    : wrong(name, 'taken by another program', 'Stop that, or start with another --port.');
  return { finding, running: false };
}

export function networkFinding(): Finding {
  const names = namesOnNetwork('0.0.0.0', []);
  return names.length > 1
    ? well('Network', `with serve --lan it is reached as ${names.join(', ')}`)
    : mind('Network', 'this machine has no address in a network', 'Join it to the one that the phone is in.');
}

/** The certificate that a server with this data folder is known by; none when there is none, or it can't be trusted any more. */
export function certificateOf(folder: string): string | undefined {
  try {
    return readAuthority(folder)?.cert;
  } catch {
    return undefined;
  }
}

export function authorityFinding(folder: string, nowMs: number): Finding {
  const name = 'Certificate';
  try {
    const authority = readAuthority(folder);
    if (!authority)
      return well(
        name,
        'none: phones reach it over plain http, where no browser keeps the screen on, opens the page without the network or reaches Bluetooth (`umberpan trust` makes one)',
      );
    const day = authority.ends.toISOString().slice(0, 10);
    return authority.ends.getTime() - nowMs > soonMs
      ? well(name, `the authority counts until ${day}`)
      : wrong(
          name,
          `the authority ends on ${day}`,
          'Run `umberpan trust --remove`, then `umberpan trust`, and trust the new one.',
        );
  } catch (error) {
    return wrong(name, 'its key is open to others', error instanceof Error ? error.message : String(error));
  }
}

export async function serialFinding(): Promise<Finding> {
  try {
    const ports = await serialPorts();
    return well('Serial ports', ports.map(({ port }) => port).join(', ') || 'none');
  } catch (error) {
    return mind('Serial ports', error instanceof Error ? error.message : String(error), 'Use MQTT or HTTP instead.');
  }
}

/** Of a server that runs: whether it has a broker of its own, and how each of its thermometers does. */
export async function inputFindings(at: Asked): Promise<Finding[]> {
  const { inputs = [], broker = null } = (await answer<InputList>(at, 'inputs')) ?? {};
  const own = broker ? [well('MQTT broker', broker.join(', '))] : [];
  const listened = inputs.map(({ input, status: { state, reason, last } }) => {
    const name = `Thermometer ${input.name}`;
    const heard = last[0] ? `, last ${JSON.stringify(last[0].raw)}` : '';
    if (state === 'hearing' || state === 'off') return well(name, `${state}${heard}`);
    return mind(name, `${state}${reason ? `: ${reason}` : ''}${heard}`, 'The page Devices shows what it sends.');
  });
  return [...own, ...listened];
}

/** Plain, and encrypted if there is an authority to know the server by. */
async function answer<T>({ port, cert }: Asked, what: string): Promise<T | undefined> {
  const path = `//localhost:${port}/api/${what}`;
  const plain = await answerTo<T>(getPlain, `http:${path}`, {});
  return plain ?? (cert === undefined ? undefined : answerTo<T>(getEncrypted, `https:${path}`, { ca: cert }));
}

async function answerTo<T>(get: typeof getEncrypted, address: string, options: RequestOptions): Promise<T | undefined> {
  try {
    const asked = get(address, { ...options, signal: AbortSignal.timeout(patienceMs) });
    const [response] = (await once(asked, 'response')) as [IncomingMessage];
    const said = await text(response);
    return response.statusCode === 200 ? (JSON.parse(said) as T) : undefined;
  } catch {
    return undefined;
  }
}

function isFree(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const server = createServer();
    server.once('error', () => resolve(false));
    server.listen(port, '127.0.0.1', () => server.close(() => resolve(true)));
  });
}
