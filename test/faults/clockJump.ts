import { fileURLToPath } from 'node:url';
import { type Fault, inFolder, numbersFrom } from './fault.ts';
import { heldIn, lossesOf } from './filled.ts';
import { serve, until } from './server.ts';

const shifted = fileURLToPath(new URL('./shiftedClock.mjs', import.meta.url));
const events = 40;

export const clockJump: Fault = {
  name: "the server's clock set back, and ahead again",
  how: `the wall clock of a server's process is set two hours back and then ahead again, at any moment, while a device sends ${events} events`,
  tries: { few: 1, many: 6 },
  make: async (tries) => {
    const random = numbersFrom(7);
    const losses: string[] = [];
    let noted = 0;
    for (let round = 0; round < tries; round++) {
      await inFolder(async (folder) => {
        const before = process.env['NODE_OPTIONS'];
        process.env['NODE_OPTIONS'] = `--import ${shifted}`;
        const served = await serve(folder).finally(() => {
          if (before === undefined) delete process.env['NODE_OPTIONS'];
          else process.env['NODE_OPTIONS'] = before;
        });
        const jumpAt = [random(events), random(events)];
        const sent: { id: string; status: number }[] = [];
        const jumps = async () => (await served.events()).filter(({ kind }) => kind === 'clock').length;
        let made = 0;
        for (let second = 0; second < events; second++) {
          for (const at of jumpAt) {
            if (at !== second) continue;
            // Each has to be seen as a jump of its own.
            await until('the jump before is noted', async () => (await jumps()) === made);
            served.child.signal('SIGUSR2');
            made++;
          }
          sent.push(await served.send());
        }
        await until('the last jump is noted', async () => (await jumps()) === made);
        const log = await served.events();
        await served.child.end('SIGTERM');
        noted += made;
        if (sent.some(({ status }) => status !== 201)) losses.push(`round ${round}: events refused`);
        const isRising = log.every(
          ({ seq, tServer }, at) =>
            at === 0 || (seq > (log[at - 1]?.seq ?? 0) && tServer >= (log[at - 1]?.tServer ?? '')),
        );
        if (!isRising) losses.push(`round ${round}: places or times fall`);
        losses.push(
          ...lossesOf(
            `round ${round}`,
            sent.map(({ id }) => id),
            await heldIn(folder),
          ),
        );
      });
    }
    return {
      tries,
      losses,
      seen: `${noted} jumps, each noted in the log; places and times of the log rise throughout`,
    };
  },
};
