import { existsSync } from 'node:fs';
import { cli } from '../e2e/builtServer.ts';
import { killWhileWriting } from '../e2e/killedLog.ts';
import { type Fault, inFolder } from './fault.ts';

export const killedWriting: Fault = {
  name: 'kill -9 while events are written',
  how: 'four devices send single events, batches of seven and plans to the built server, which is killed after 5 to 150 ms more and started again on what is left',
  tries: { few: 2, many: 20 },
  hindered: () => (existsSync(cli) ? undefined : 'it is not built: npm run build'),
  make: (tries) =>
    inFolder(async (folder) => {
      const { acknowledged, kept, lost, doubled, unasked, damaged } = await killWhileWriting(folder, tries);
      const losses = [
        ...(lost.length > 0 ? [`${lost.length} acknowledged events or plans lost`] : []),
        ...(doubled > 0 ? [`${doubled} events or plans doubled`] : []),
        ...(damaged > 0 ? [`${damaged} events damaged`] : []),
      ];
      return {
        tries,
        losses,
        seen: `${acknowledged} events and plans acknowledged, ${kept} kept: ${unasked} were on the disk and not acknowledged yet`,
      };
    }),
};
