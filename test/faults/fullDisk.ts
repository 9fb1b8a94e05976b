import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { type Fault, inFolder } from './fault.ts';
import { heldIn, lossesOf } from './filled.ts';
import { serve, until } from './server.ts';

const small = '1300k';
const large = '16m';

export const fullDisk: Fault = {
  name: 'a full disk',
  how: `a server keeps its data on a tmpfs of ${small}; a device sends until it is refused, and on; then the disk is made larger`,
  tries: { few: 1, many: 5 },
  hindered: () =>
    process.getuid?.() === 0 && process.platform === 'linux' ? undefined : 'only root may mount a tmpfs on Linux',
  make: async (tries) => {
    const seen = { refused: 0, acknowledged: 0 };
    const losses: string[] = [];
    for (let round = 0; round < tries; round++) {
      await inFolder(async (folder) => {
        const data = join(folder, 'data');
        mkdirSync(data);
        asRoot('mount', ['-t', 'tmpfs', '-o', `size=${small}`, 'tmpfs', data]);
        try {
          const { child, send, events } = await serve(data);
          const sent: { id: string; status: number }[] = [];
          const refused = () => sent.filter(({ status }) => status !== 201);
          while (refused().length < 20 && sent.length < 3000) sent.push(await send());
          if (refused().length === 0) losses.push(`round ${round}: the disk was never full`);
          if (refused().some(({ status }) => status !== 503))
            losses.push(`round ${round}: answered ${refused().map(({ status }) => status)}`);
          // What is acknowledged can be read while the disk is full.
          const acknowledged = sent.filter(({ status }) => status === 201).map(({ id }) => id);
          const readable = (await events()).map(({ id }) => id);
          losses.push(...lossesOf(`round ${round}, full`, acknowledged, { ids: readable, damaged: [] }));
          asRoot('mount', ['-o', `remount,size=${large}`, data]);
          await until('what was held is written', async () => (await events()).length === sent.length + 1);
          await child.end('SIGTERM');
          losses.push(
            ...lossesOf(
              `round ${round}, opened again`,
              sent.map(({ id }) => id),
              await heldIn(data),
            ),
          );
          seen.refused += refused().length;
          seen.acknowledged += acknowledged.length;
        } finally {
          asRoot('umount', ['-l', data]);
        }
      });
    }
    return {
      ...{ tries, losses },
      seen: `the server stayed up and could be read; ${seen.acknowledged} events acknowledged before, ${seen.refused} refused with 503, held, and written by itself when there was room`,
    };
  },
};

function asRoot(program: 'mount' | 'umount', args: readonly string[]) {
  const { status, stderr } = spawnSync(program, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`${program} ${args.join(' ')}: ${stderr}`);
}
