import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Fault, inFolder, numbersFrom } from './fault.ts';
import { heldIn, lossesOf } from './filled.ts';
import { serve, until } from './server.ts';

const syncs = 'fsync,fdatasync';
/** How many synchronisations in a row fail. */
const failing = 6;

function hinderedStrace(): string | undefined {
  const { status } = spawnSync('strace', ['-qq', '-e', 'trace=none', 'true']);
  return status === 0 ? undefined : 'strace is not there, or may not look into other processes';
}

export const syncError: Fault = {
  name: 'a disk that fails to synchronise',
  how: `strace lets ${failing} calls of fsync and fdatasync in a row fail with EIO, beginning at another one each time, while a device sends to a server; what is not acknowledged is sent again`,
  tries: { few: 1, many: 20 },
  hindered: hinderedStrace,
  make: async (tries) => {
    const random = numbersFrom(6);
    const seen = { hit: 0, refused: 0, acknowledged: 0 };
    const losses: string[] = [];
    for (let round = 0; round < tries; round++) {
      await inFolder(async (folder) => {
        const first = 30 + random(60);
        const fault = `inject=${syncs}:error=EIO:when=${first}..${first + failing - 1}`;
        const { child, send, again, events } = await serve(folder, [
          'strace',
          '-f',
          '-qq',
          '-o',
          '/dev/null',
          '-e',
          `trace=${syncs}`,
          '-e',
          fault,
        ]);
        const sent: { id: string; status: number }[] = [];
        for (let second = 0; second < 120; second++) sent.push(await send());
        const acknowledged = sent.filter(({ status }) => status === 201).map(({ id }) => id);
        const refused = sent.filter(({ status }) => status !== 201);
        if (refused.some(({ status }) => status !== 503))
          losses.push(`round ${round}: answered ${refused.map(({ status }) => status)}`);
        for (const { id } of refused) await until(`${id} is taken`, async () => (await again(id)) === 201);
        const there = await events();
        await child.end('SIGTERM');
        const all = sent.map(({ id }) => id);
        losses.push(...lossesOf(`round ${round}, asked`, all, { ids: there.map(({ id }) => id), damaged: [] }));
        losses.push(...lossesOf(`round ${round}, opened again`, all, await heldIn(folder)));
        seen.hit += refused.length > 0 ? 1 : 0;
        seen.refused += refused.length;
        seen.acknowledged += acknowledged.length;
      });
    }
    return {
      ...{ tries, losses },
      seen: `the server stayed up; ${seen.refused} events refused with 503 in ${seen.hit} of the tries and kept when the disk was well again, ${seen.acknowledged} acknowledged at once`,
    };
  },
};

export const oneSyncEach: Fault = {
  name: 'a commit that is acknowledged before it is on the disk',
  how: 'strace counts the calls of fsync and fdatasync while events are written one by one: there has to be one for each at least',
  tries: { few: 15, many: 200 },
  hindered: hinderedStrace,
  make: (tries) =>
    inFolder(async (folder) => {
      const log = join(folder, 'syncs');
      const { child, send } = await serve(folder, ['strace', '-f', '-qq', '-o', log, '-e', `trace=${syncs}`]);
      const count = () =>
        readFileSync(log, 'utf8')
          .split('\n')
          .filter((line) => /(fsync|fdatasync)\(.*= 0$/.test(line)).length;
      const before = count();
      for (let second = 0; second < tries; second++) await send();
      const counted = count() - before;
      await child.end('SIGTERM');
      const losses = counted < tries ? [`${tries - counted} commits without a synchronisation`] : [];
      return { tries, losses, seen: `${counted} synchronisations for ${tries} commits` };
    }),
};
