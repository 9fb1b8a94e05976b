/** `umberpan trust`: an authority of the home's own, so that phones can reach this machine encrypted. It is made here and installed nowhere. */
import type { Command } from 'commander';
import { folderFailed, folderOf } from './dataOption.ts';
import { write, writeJson } from './output.ts';
import { stopping } from './stop.ts';

interface TrustOptions {
  readonly data?: string;
  readonly json?: true;
}

export function register(program: Command): void {
  program
    .command('trust')
    .description('make a certificate authority of your own, for `serve --lan --https`')
    .option('--data <folder>', 'the data folder (or UMBERPAN_DATA)')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Nothing is installed: each device that is to trust it is told so by hand.
Exit codes: 0 done, 1 the folder can't be written, 2 misused.

Example:
  umberpan trust --data ~/umberpan`,
    )
    .action(stopping(trust));
}

async function trust({ data, json }: TrustOptions): Promise<void> {
  const { makeAuthority } = await import('../server/devices/trust.ts');
  const folder = folderOf(data);
  const { file, fingerprint, ends } = await makeAuthority(folder, new Date()).catch(folderFailed(folder));
  if (json) return writeJson({ file, fingerprint, ends: ends.toISOString() });
  write(
    [
      `The certificate: ${file}`,
      `Its SHA-256 fingerprint: ${fingerprint}`,
      `It counts until ${ends.toISOString().slice(0, 10)}.`,
      '',
      'What it gives a phone: the app works without the network, the screen stays on, the camera and',
      'Bluetooth can be used, and nobody on the network can read along.',
      '',
      '1. umberpan serve --lan',
      '2. On the phone, open the address that is printed, with api/authority behind it.',
      '3. Compare the fingerprint, then have the phone trust it (in its settings, under certificates).',
      '4. umberpan serve --lan --https, and pair the phone anew: another address is another app to it.',
      '',
      'Mind: whoever gets the key beside the certificate can pass for any site to a device that trusts it.',
      'It is readable by you alone. To take it back, remove it from the devices and delete its folder.',
    ].join('\n'),
  );
}
