/** `umberpan serve`: the app and its API, on this machine alone unless told otherwise. */
import { homedir } from 'node:os';
import type { Command } from 'commander';
import { InvalidArgumentError, Option } from 'commander';

interface ServeOptions {
  readonly port: number;
  readonly host: string;
  readonly name: string[];
  readonly data?: string;
}

export function register(program: Command): void {
  program
    .command('serve')
    .description('serve the app and its API until interrupted')
    .addOption(
      new Option('--port <number>', '0 lets the system choose').env('UMBERPAN_PORT').default(8327).argParser(port),
    )
    .option('--host <address>', 'address to listen at; 0.0.0.0 lets every device on your network in', '127.0.0.1')
    .option('--name <name>', 'a further name that devices reach this machine by (may be repeated)', collect, [])
    .option('--data <folder>', 'where kits, plans and cooks are kept (or UMBERPAN_DATA)')
    .addHelpText('after', '\nExamples:\n  umberpan serve\n  umberpan serve --host 0.0.0.0 --name kitchen.local')
    .action(serve);
}

async function serve({ port, host, name, data }: ServeOptions): Promise<void> {
  // Loaded here, so that the other commands need not wait for a server that they do not use.
  const [{ startServer }, { dataFolder }] = await Promise.all([
    import('../server/start.ts'),
    import('../server/dataFolder.ts'),
  ]);
  const folder = data ?? dataFolder(process.env, process.platform, homedir());
  const { address, stop } = await startServer({ data: folder, host, port, names: name });
  console.log(`Umberpan is at ${address}`);
  if (!isLoopback(host))
    console.error('Everyone on this network can read and change what is kept here, and steer a cook.');
  stopOnSignals(stop);
}

function stopOnSignals(stop: () => Promise<void>) {
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    process.once(signal, () => {
      // A second one, while the store closes, ends the process at once.
      process.once(signal, () => process.exit(130));
      void stop();
    });
  }
}

function isLoopback(host: string) {
  return host === 'localhost' || host === '::1' || host.startsWith('127.');
}

function port(text: string): number {
  if (!/^\d{1,5}$/.test(text) || Number(text) > 65535) throw new InvalidArgumentError('Allowed: 0 to 65535.');
  return Number(text);
}

function collect(name: string, before: string[]): string[] {
  return [...before, name];
}
