import { existsSync } from 'node:fs';
import { cli, startBuiltServer } from '../e2e/builtServer.ts';
import { type Fault, inFolder } from './fault.ts';
import { fill } from './filled.ts';

/** Three hours, one each second. */
const readings = 10_800;

export const killedRestart: Fault = {
  name: 'kill -9 of the server after a cook of three hours, and its start',
  how: `the built server with a cook of ${readings} readings is killed and started again; from the start of the process to the first page and to the first picture of the cook on its live stream`,
  tries: { few: 2, many: 6 },
  hindered: () => (existsSync(cli) ? undefined : 'it is not built: npm run build'),
  make: (tries) =>
    inFolder(async (folder) => {
      const ids = await fill(folder, readings);
      const pageMs: number[] = [];
      const liveMs: number[] = [];
      const losses: string[] = [];
      await (await startBuiltServer(folder)).end('SIGKILL');
      for (let round = 0; round < tries; round++) {
        const startMs = performance.now();
        const server = await startBuiltServer(folder);
        if ((await fetch(server.address)).status !== 200) losses.push(`round ${round}: no page`);
        pageMs.push(performance.now() - startMs);
        const { cooks } = (await (await fetch(`${server.address}api/cooks`)).json()) as { cooks: { id: string }[] };
        const lastSeq = await firstPicture(`${server.address}api/cooks/${cooks[0]?.id}/live`);
        liveMs.push(performance.now() - startMs);
        if (lastSeq !== ids.length) losses.push(`round ${round}: the picture is of ${lastSeq} events of ${ids.length}`);
        await server.end('SIGKILL');
      }
      return { tries, losses, seen: `first page after ${inWords(pageMs)}, first picture after ${inWords(liveMs)}` };
    }),
};

async function firstPicture(url: string): Promise<number | undefined> {
  const { body } = await fetch(url);
  const reader = (body as ReadableStream<Uint8Array>).getReader();
  const decoder = new TextDecoder();
  let text = '';
  for (;;) {
    const { done, value } = await reader.read();
    text += decoder.decode(value, { stream: true });
    const found = /^event: snapshot\nid: (\d+)\ndata: .*\n\n/m.exec(text);
    if (!found && !done) continue;
    await reader.cancel();
    return found ? Number(found[1]) : undefined;
  }
}

function inWords(times: readonly number[]): string {
  const sorted = times.toSorted((a, b) => a - b);
  return `${Math.round(sorted[sorted.length >> 1] ?? 0)} ms (median; ${Math.round(sorted.at(-1) ?? 0)} ms at most)`;
}
