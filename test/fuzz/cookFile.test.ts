import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { canonicalJson } from '../../src/core/log/canonicalJson.ts';
import { writeCookFile } from '../../src/core/log/cookFile.ts';
import { buildServer } from '../../src/server/server.ts';
import { openStore } from '../../src/server/store/store.ts';
import { sampleCook } from '../sampleCook.ts';
import { scratchFolder } from '../testServer.ts';
import { casesOf, everyCase, type Tally, tallyOf, timeFor } from './cases.ts';
import { keptStore } from './keptStore.ts';
import { expectProblem } from './problems.ts';
import { anyText, oddValue, spoilt, spoiltLines, spoiltText } from './spoilt.ts';

const sha256 = (text: string) => createHash('sha256').update(text).digest('hex');
const together = 1000;
const cases = casesOf(500);

it(
  'any file of a cook is taken in whole or refused with its line, and what is taken in goes on being a cook',
  async () => {
    const tally = tallyOf('cook files');
    for (let done = 0; done < cases; done += together) await takeIn(Math.min(together, cases - done), tally);
    tally.tell();
  },
  timeFor(cases, 40),
);

async function takeIn(count: number, tally: Tally): Promise<void> {
  const folder = scratchFolder();
  const store = await openStore(folder);
  const app = await buildServer({ store, pages: folder });
  const kept = keptStore(folder);
  const headers = { 'content-type': 'application/x-ndjson' };
  try {
    await everyCase(files, count, async (payload) => {
      const before = kept.state();
      const answer = await app.inject({ method: 'POST', url: '/api/cooks/import', headers, payload });
      tally.count(String(answer.statusCode));
      if (answer.statusCode >= 400) {
        const { errors, detail } = expectProblem(answer);
        if (answer.statusCode === 400 && payload !== '') expect(errors?.[0]?.field ?? detail).toMatch(/^line \d+$/);
        expect(kept.state()).toBe(before);
        return;
      }
      const { cook } = answer.json() as { cook: string };
      const url = `/api/cooks/${encodeURIComponent(cook)}`;
      const shown = await app.inject(url);
      // A name that no address can carry is refused there, and nothing else is.
      if (shown.statusCode === 400) return;
      expect(shown.statusCode).toBe(200);
      const file = await app.inject(`${url}/file`);
      const again = await app.inject({ method: 'POST', url: '/api/cooks/import', headers, payload: file.body });
      expect(again.json()).toMatchObject({ cook, new: 0 });
    });
    for (const path of ['/api/cooks', '/api/book', '/api/workspace'])
      expect((await app.inject(path)).statusCode).toBe(200);
  } finally {
    kept.close();
    await app.close();
    await store.close();
  }
}

/** A new cook each time, as what is in the store already would be refused for that alone: its beginning, and a few events of any kind. */
const right = fc.array(fc.nat(), { maxLength: 4 }).map((places) => {
  const { cook, begun, events } = sampleCook(2);
  const others = new Set(places.map((place) => events[1 + (place % (events.length - 1))]));
  return { cook, events: [begun, ...others] as readonly unknown[] };
});

/** Spoilt, and then written as if nothing had been: counted, in canonical form, with the hash of what it is now. */
const forged = right.chain(({ cook, events }) =>
  spoilt(fc.constant(events)).map((changed) => {
    const lines = (Array.isArray(changed) ? changed : [changed]).map((event) => `${canonical(event)}\n`);
    const about = {
      cook,
      events: lines.length,
      format: 'umberpan-cook',
      formatVersion: 1,
      sha256: sha256(lines.join('')),
    };
    return `${canonicalJson(about)}\n${lines.join('')}`;
  }),
);

function canonical(event: unknown): string {
  return canonicalJson(JSON.parse(JSON.stringify(event) ?? 'null'));
}

const written = right.map(({ cook, events }) => writeCookFile(cook, events as never, sha256));

const files = fc.oneof(
  { weight: 1, arbitrary: written },
  { weight: 8, arbitrary: forged },
  { weight: 3, arbitrary: spoiltText(written) },
  { weight: 2, arbitrary: spoiltLines(written) },
  { weight: 1, arbitrary: fc.array(oddValue).map((values) => values.map((value) => JSON.stringify(value)).join('\n')) },
  { weight: 1, arbitrary: anyText() },
);
