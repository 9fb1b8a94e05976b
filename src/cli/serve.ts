/** `umberpan serve`: the app and its API, on this machine alone unless told otherwise. */
import type { Command } from 'commander';
import { Option } from 'commander';
import type { DeviceRole } from '../api/device.ts';
import { deviceRoles } from '../api/device.ts';
import type { Running } from '../server/start.ts';
import { folderOf } from './dataOption.ts';
import { nameOption } from './nameOption.ts';
import { write } from './output.ts';
import { port } from './port.ts';

interface ServeOptions {
  readonly port: number;
  readonly host: string;
  readonly lan?: true;
  readonly https?: boolean;
  readonly pair?: DeviceRole;
  readonly broker?: number;
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
    .option('--lan', 'let paired devices on your network in')
    .addOption(new Option('--host <address>', 'one address to listen at').default('127.0.0.1').conflicts('lan'))
    .option('--https', 'encrypted, for devices that trust this machine (see `umberpan trust`)')
    .addOption(new Option('--pair <role>', 'print a code that lets a device in with this role').choices(deviceRoles))
    .addOption(
      new Option('--broker <port>', 'also a small MQTT broker, for thermometers alone (usually 1883)').argParser(port),
    )
    .addOption(nameOption())
    .option('--data <folder>', 'where kits, plans and cooks are kept (or UMBERPAN_DATA)')
    .addHelpText(
      'after',
      `
Exit codes: 0 done, 1 it can't start (a port is taken, the folder can't be used, or --https has no authority), 2 misused,
130 interrupted again before it had closed.

Examples:
  umberpan serve
  umberpan serve --lan
  umberpan serve --lan --name pan.home
  umberpan serve --lan --broker 1883`,
    )
    .action(serve);
}

async function serve({ port, host, lan, https = false, pair, broker, name, data }: ServeOptions): Promise<void> {
  // Loaded here, so that the other commands need not wait for a server that they do not use.
  const { startServer } = await import('../server/start.ts');
  const running = await startServer({
    data: folderOf(data),
    host: lan ? '0.0.0.0' : host,
    port,
    names: name,
    https,
    broker,
  });
  console.log(`Umberpan is at ${running.address}`);
  if (broker !== undefined) write(`Thermometers publish by MQTT to ${running.broker.join(' or ')}`);
  if (running.addresses.length > 0) await tellNetwork(running, https, pair);
  stopOnSignals(running.stop);
}

/** What an open door means, and a code to pair with: the code on a screen only, or when asked for, so that it ends in no log. */
async function tellNetwork({ addresses, hasKeeper, invite }: Running, https: boolean, pair: DeviceRole | undefined) {
  write(`Devices on your network reach it at ${addresses.join(' or ')}`);
  write('Only devices that you pair are let in. Whoever uses this machine itself needs no code.');
  if (!https) write('What is sent can be read by others on your network: `umberpan trust` tells of --https.');
  const role = pair ?? (process.stdout.isTTY ? (hasKeeper ? 'cook' : 'keeper') : undefined);
  if (!role) return write('Codes are made on the page Devices, on this machine.');
  const link = invite(role) ?? '';
  write(
    `\n${await pictureOf(link)}\n\n${link}\nPairs one device as ${role}, once, within 10 minutes. More codes: the page Devices.`,
  );
}

/** Dark on a light ground, as readers expect, whatever colours the screen has. */
async function pictureOf(link: string): Promise<string> {
  const [{ renderUnicodeCompact }, { styleText }] = await Promise.all([import('uqr'), import('node:util')]);
  const shape = { border: 2, ecc: 'M' } as const;
  if (!process.stdout.isTTY || process.env['NO_COLOR']) return renderUnicodeCompact(link, shape);
  const lines = renderUnicodeCompact(link, { ...shape, invert: true }).split('\n');
  return lines.map((line) => styleText(['black', 'bgWhiteBright'], line)).join('\n');
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
