/** `umberpan trust`: an authority of the home's own, so that phones can reach this machine encrypted. It is made here and installed nowhere. */
import type { Command } from 'commander';
import { folderFailed, folderOf } from './dataOption.ts';
import { nameOption } from './nameOption.ts';
import { write, writeJson } from './output.ts';
import { stopping } from './stop.ts';

interface TrustOptions {
  readonly name: string[];
  readonly remove?: true;
  readonly data?: string;
  readonly json?: true;
}

export function register(program: Command): void {
  program
    .command('trust')
    .description('make a certificate authority of your own, for `serve --lan --https`')
    .option('--data <folder>', 'the data folder (or UMBERPAN_DATA)')
    .addOption(nameOption())
    .option('--remove', 'delete the authority and its key')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Nothing is installed: each device that is to trust it is told so by hand. It may vouch for this machine's names, for .local,
localhost and home.arpa, and for private addresses; for no site of the internet.
Exit codes: 0 done, 1 the folder can't be written, 2 misused.

Example:
  umberpan trust --data ~/umberpan`,
    )
    .action(stopping(trust));
}

async function trust({ data, name, remove, json }: TrustOptions): Promise<void> {
  const { endingsOf, makeAuthority, removeAuthority } = await import('../server/devices/trust.ts');
  const folder = folderOf(data);
  if (remove) {
    const removed = removeAuthority(folder);
    if (json) return writeJson({ removed });
    return write(removed ? 'Deleted. Take the certificate from the devices that trust it, too.' : 'There is none.');
  }
  const authority = await makeAuthority(folder, new Date(), name).catch(folderFailed(folder));
  const { file, fingerprint, ends } = authority;
  const names = (await endingsOf(authority)) ?? null;
  if (json) return writeJson({ file, fingerprint, ends: ends.toISOString(), names });
  write(
    [
      `The certificate: ${file}`,
      `Its SHA-256 fingerprint: ${fingerprint}`,
      `It counts until ${ends.toISOString().slice(0, 10)}.`,
      names
        ? `It may vouch for private addresses, and for names that end in ${names.join(', ')}.`
        : 'It may vouch for any name: it was made before this was limited. Make another: umberpan trust --remove',
      '',
      'What it gives a phone: the app works without the network, the screen stays on, the camera and',
      'Bluetooth can be used, and nobody on the network can read along.',
      '',
      '1. umberpan serve --lan',
      '2. On the phone, open the address that is printed, with api/authority behind it.',
      '3. Compare the fingerprint, then have the phone trust it (in its settings, under certificates).',
      '4. umberpan serve --lan --https, and pair the phone anew: another address is another app to it.',
      '',
      'Mind: whoever gets the key beside the certificate can pass for this machine to a device that trusts it.',
      'It is readable by you alone. To take it back: umberpan trust --remove, and remove it from the devices.',
    ].join('\n'),
  );
}
