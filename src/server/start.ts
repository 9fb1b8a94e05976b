/** Starts the server on a data folder and stops it again, leaving the store closed. */
import { hostname, networkInterfaces } from 'node:os';
import { damageOfNewestCook } from './cooking/damage.ts';
import { buildServer } from './server.ts';
import { openStore } from './store/store.ts';

export interface StartOptions {
  readonly data: string;
  readonly host: string;
  /** 0 lets the system choose. */
  readonly port: number;
  readonly names: readonly string[];
}

export interface Running {
  /** Where to point a browser on this machine. */
  readonly address: string;
  stop(): Promise<void>;
}

export async function startServer({ data, host, port, names }: StartOptions): Promise<Running> {
  const store = await openStore(data);
  let close = (): Promise<void> => store.close();
  try {
    const logger = { level: 'warn', stream: process.stderr };
    const app = await buildServer({ store, names: [...names, ...namesOf(host)], logger });
    app.addHook('onClose', () => store.close());
    // From here on the app has clocks of its own, which would keep a process alive that failed to listen.
    close = () => app.close();
    const damage = await damageOfNewestCook(store.db);
    if (damage) app.log.warn(damage);
    await app.listen({ host, port });
    const bound = app.server.address();
    const boundPort = bound && typeof bound === 'object' ? bound.port : port;
    const address = `http://${isEvery(host) ? 'localhost' : bracketed(host)}:${boundPort}/`;
    store.tellAddress(address);
    return { address, stop: close };
  } catch (error) {
    await close();
    throw isPortTaken(error)
      ? new Error(`Port ${port} is taken by another program; choose another with --port.`)
      : error;
  }
}

function isPortTaken(error: unknown) {
  return error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
}

/** An address that stands for all of the machine's is reached by each of them, and by the machine's name. */
function namesOf(host: string): string[] {
  if (!isEvery(host)) return [bracketed(host)];
  const own = Object.values(networkInterfaces()).flatMap((addresses) => addresses ?? []);
  return [hostname(), `${hostname()}.local`, ...own.map(({ address }) => bracketed(address))];
}

function isEvery(host: string) {
  return host === '0.0.0.0' || host === '::';
}

function bracketed(address: string) {
  return address.includes(':') ? `[${address}]` : address;
}
