import { createHash, randomUUID } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import type { FastifyInstance } from 'fastify';
import { sql } from 'kysely';
import { expect, it } from 'vitest';
import { canonicalJson } from '../../src/core/log/canonicalJson.ts';
import { defaultKit } from '../../src/core/pan/kit.ts';
import { defaultRequest } from '../../src/core/planning/request.ts';
import { buildServer } from '../../src/server/server.ts';
import { beginCook } from '../../src/server/store/cooks.ts';
import { appendEvents } from '../../src/server/store/events.ts';
import { createKit } from '../../src/server/store/kits.ts';
import { createPlan } from '../../src/server/store/plans.ts';
import { restoreWorkspace } from '../../src/server/store/restore.ts';
import { openStore, type Store } from '../../src/server/store/store.ts';
import { StoreError } from '../../src/server/store/storeError.ts';
import { isEmpty, readHead, takeInWorkspace, workspaceText } from '../../src/server/store/workspace.ts';
import { sampleCook } from '../sampleCook.ts';
import { scratchFolder } from '../testServer.ts';
import { casesOf, everyCase, tallyOf, timeFor } from './cases.ts';
import { anyText, oddValue, spoilt, spoiltLines, spoiltText } from './spoilt.ts';

const cases = casesOf(500);

it(
  'any file of a workspace is taken in whole or refused with the reason, and a refused one leaves nothing',
  async () => {
    const tally = tallyOf('workspace files');
    const text = await written();
    const store = await openStore(scratchFolder());
    const app = await buildServer({ store, pages: scratchFolder() });
    try {
      await everyCase(filesLike(text), cases, async (file) => {
        const refused = await refusalOf(store, file);
        tally.count(refused === undefined ? 'taken in' : 'refused');
        if (refused !== undefined) {
          expect(refused).toMatch(/\w/);
          expect(await isEmpty(store.db)).toBe(true);
          return;
        }
        await expectServed(app);
        await takeAway(store);
      });
    } finally {
      await app.close();
      await store.close();
    }
    tally.tell();
  },
  timeFor(cases, 60),
);

const fewer = Math.ceil(cases / 100);

it(
  'the same by way of a file and a folder',
  async () => {
    const tally = tallyOf('workspace files, restored');
    const like = filesLike(await written());
    await everyCase(like, fewer, async (text) => {
      const [folder, file] = [scratchFolder(), join(scratchFolder(), 'workspace.json')];
      writeFileSync(file, text);
      const refused = await restoreWorkspace(file, folder).then(
        () => undefined,
        (error: unknown) => error,
      );
      tally.count(refused === undefined ? 'taken in' : 'refused');
      if (refused === undefined) return;
      expect(refused).toBeInstanceOf(StoreError);
      const store = await openStore(folder);
      expect(await isEmpty(store.db)).toBe(true);
      await store.close();
    });
    tally.tell();
  },
  timeFor(fewer, 500),
);

/** What a taken-in store is asked for has to be answered. */
async function expectServed(app: FastifyInstance): Promise<void> {
  const lists = ['kits', 'plans', 'lots', 'glasses', 'cooks', 'book', 'workspace'];
  for (const list of lists) expect([list, (await app.inject(`/api/${list}`)).statusCode]).toEqual([list, 200]);
  const { cooks } = (await app.inject('/api/cooks')).json() as { cooks: { id: string }[] };
  for (const { id } of cooks) expect((await app.inject(`/api/cooks/${id}`)).statusCode).toBe(200);
}

/** As it was before; what refers goes before what is referred to. */
async function takeAway({ db }: Store): Promise<void> {
  const tables = [
    'cook_summary',
    'event',
    'tasting',
    'glass',
    'lot_note',
    'lot',
    'cook',
    'plan',
    'kit',
    'sqlite_sequence',
  ];
  await db.transaction().execute(async (transaction) => {
    for (const table of tables) await sql`DELETE FROM ${sql.table(table)}`.execute(transaction);
  });
}

async function refusalOf({ db }: Store, text: string): Promise<string | undefined> {
  const [first = '', ...rest] = text.split(/\r?\n/);
  try {
    readHead(first);
    await takeInWorkspace(db, linesOf(rest));
    return undefined;
  } catch (error) {
    if (error instanceof StoreError) return error.message;
    throw error;
  }
}

async function* linesOf(lines: readonly string[]) {
  yield* lines;
}

/** A kit, its plan and a cook. */
async function written(): Promise<string> {
  const store = await openStore(scratchFolder());
  const now = new Date('2031-05-09T18:30:00Z');
  const kitId = randomUUID();
  await createKit(store.db, kitId, defaultKit, now);
  await createPlan(store.db, randomUUID(), { kitId, request: defaultRequest }, now);
  const { cook, begun, events } = sampleCook(2);
  await beginCook(store.db, begun, now.toISOString());
  await appendEvents(
    store.db,
    cook,
    events.slice(0, 4).map((event) => ({ event, tServer: now.toISOString() })),
  );
  let text = '';
  for await (const piece of workspaceText(store.db)) text += piece;
  await store.close();
  return text;
}

function filesLike(text: string): fc.Arbitrary<string> {
  const right = fc.constant(text);
  const [head = '', ...lines] = text.trimEnd().split('\n');
  const rows = lines.slice(0, -1).map((line) => JSON.parse(line.replace(/,$/, '')) as unknown);
  /** Spoilt, and then counted and hashed anew. */
  const forged = spoilt(fc.constant(rows)).map((changed) => {
    const all = (Array.isArray(changed) ? changed : [changed]).map((row) =>
      canonicalJson(JSON.parse(JSON.stringify(row) ?? 'null')),
    );
    const hash = createHash('sha256');
    for (const row of all) hash.update(`${row}\n`);
    return `${head}\n${all.join(',\n')}\n],"count":${all.length},"sha256":"${hash.digest('hex')}"}\n`;
  });
  return fc.oneof(
    { weight: 8, arbitrary: forged },
    { weight: 4, arbitrary: spoiltText(right) },
    { weight: 3, arbitrary: spoiltLines(right) },
    {
      weight: 1,
      arbitrary: spoilt(fc.constant(JSON.parse(head.replace(/,"rows":\[$/, '}')))).map((odd) =>
        [JSON.stringify(odd), ...lines].join('\n'),
      ),
    },
    {
      weight: 1,
      arbitrary: fc.array(oddValue).map((values) => [head, ...values.map((value) => JSON.stringify(value))].join('\n')),
    },
    { weight: 1, arbitrary: anyText() },
  );
}
