import { randomUUID } from 'node:crypto';
import fc from 'fast-check';
import type { FastifyInstance } from 'fastify';
import { expect, it } from 'vitest';
import { buildServer } from '../../src/server/server.ts';
import { openStore } from '../../src/server/store/store.ts';
import { sampleCook } from '../sampleCook.ts';
import { scratchFolder } from '../testServer.ts';
import { casesOf, everyCase, type Tally, tallyOf, timeFor } from './cases.ts';
import { arbitraryOf, type Schema } from './fromSchema.ts';
import { keptStore } from './keptStore.ts';
import { expectProblem } from './problems.ts';
import { rightBodies } from './rightBodies.ts';
import { anyText, oddValue, spoilt, spoiltText } from './spoilt.ts';

interface Operation {
  readonly parameters?: readonly {
    readonly name: string;
    readonly in: 'path' | 'query' | 'header';
    readonly schema: Schema;
  }[];
  readonly requestBody?: { readonly content: Readonly<Record<string, { readonly schema: Schema }>> };
}

interface Document {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: { readonly schemas: Readonly<Record<string, Schema>> };
}

interface Request {
  readonly method: string;
  readonly url: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly payload?: string;
}

/** A fresh server after so many cases, so that its store stays small enough to be compared with what it was. */
const together = 1000;
const cases = casesOf(750);
/** These take no input, and make a whole workspace, or ask the system for its ports: much work, the same each time. */
const actsWithoutInput = ['PUT /api/demo', 'GET /api/inputs/ports'];

it(
  'any request to any address of the API is answered or refused in words, and a refused one changes nothing',
  async () => {
    const tally = tallyOf('API');
    for (let done = 0; done < cases; done += together) await ask(Math.min(together, cases - done), tally);
    tally.tell();
  },
  timeFor(cases, 40),
);

async function ask(count: number, tally: Tally): Promise<void> {
  const folder = scratchFolder();
  const store = await openStore(folder);
  const app = await buildServer({ store, pages: folder });
  const kept = keptStore(folder);
  const end = async () => {
    kept.close();
    await app.close();
    await store.close();
  };
  try {
    const there = await somethingOfEach(app);
    const document = (await app.inject('/api/openapi.json')).json() as Document;
    await everyCase(requestsOf(document, there), count, async (request) => {
      const before = kept.state();
      const answer = await app.inject(request as never);
      tally.count(String(answer.statusCode));
      if (answer.statusCode < 400) return;
      expectProblem(answer);
      expect(kept.state()).toBe(before);
    });
    // What was taken can be given back.
    for (const [path, { get }] of Object.entries(document.paths)) {
      if (!get || path.includes('{')) continue;
      expect([path, (await app.inject(path)).statusCode]).toEqual([path, path === '/api/authority' ? 404 : 200]);
    }
  } finally {
    await end();
  }
}

/** By the collection that they are in. */
type Ids = Readonly<Record<string, string>>;

/** Makes one record of each kind. */
async function somethingOfEach(app: FastifyInstance): Promise<{ readonly ids: Ids; readonly right: Right }> {
  const { cook, begun } = sampleCook(0);
  const right = rightBodies(cook);
  const ids: Record<string, string> = { cooks: cook };
  const make = async (path: string, payload: unknown) => {
    const url = path.replace(/\{id\}/, () => ids[path.split('/')[2] ?? ''] ?? '');
    const { statusCode, body } = await app.inject({ method: 'POST', url, payload: payload as object });
    if (statusCode !== 201) throw new Error(`${url}: ${body}`);
    ids[path.split('/').at(-1) ?? ''] ??= (JSON.parse(body) as { id: string }).id;
  };
  await make('/api/cooks', begun);
  const made = ['kits', 'plans', 'lots', 'lots/{id}/notes', 'glasses', 'glasses/{id}/tastings', 'inputs'];
  for (const path of made)
    await make(`/api/${path}`, fc.sample(right[`POST /api/${path}`] as fc.Arbitrary<unknown>, 1)[0]);
  return { ids, right };
}

type Right = ReturnType<typeof rightBodies>;

function requestsOf({ paths, components }: Document, { ids, right }: Awaited<ReturnType<typeof somethingOfEach>>) {
  const allowed = arbitraryOf({ components: components.schemas, ids: Object.values(ids) });
  const operations = Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ path, method: method.toUpperCase(), operation })),
  );
  const asked = operations.filter(({ path, method }) => !actsWithoutInput.includes(`${method} ${path}`));
  const weighted = asked.map(({ path, method, operation }) => {
    const bodies = bodiesOf(operation.requestBody, allowed, right[`${method} ${path}`]);
    // What takes no body has less to be refused.
    return {
      weight: operation.requestBody ? 4 : 1,
      arbitrary: requestOf(path, method, operation, ids, allowed, bodies),
    };
  });
  return fc.oneof(...weighted);
}

function requestOf(
  path: string,
  method: string,
  { parameters = [] }: Operation,
  ids: Ids,
  allowed: Allowed,
  bodies: fc.Arbitrary<Body>,
): fc.Arbitrary<Request> {
  const text = (schema: Schema) =>
    fc.oneof({ weight: 4, arbitrary: allowed(schema).map(String) }, fc.string(), oddText);
  const given = (place: string) => {
    const named = parameters.filter((parameter) => parameter.in === place);
    return fc.record(Object.fromEntries(named.map(({ name, schema }) => [name, text(schema)])), { requiredKeys: [] });
  };
  // A stream of a cook that is there has no end.
  const isThere = path.endsWith('/live') ? 0 : 12;
  const idIn = (collection: string) =>
    fc.oneof(
      { weight: isThere, arbitrary: fc.constant(ids[collection] ?? randomUUID()) },
      { weight: isThere && 1, arbitrary: fc.constantFrom(...Object.values(ids)) },
      ...[fc.uuid(), fc.string(), oddText],
    );
  const collections = [...path.matchAll(/(\w+)\/\{\w+\}/g)].map(([, collection = '']) => collection);
  return fc
    .record({ found: fc.tuple(...collections.map(idIn)), query: given('query'), header: given('header'), body: bodies })
    .map(({ found, query, header, body }) => {
      let place = 0;
      const named = path.replaceAll(/\{\w+\}/g, () => encoded(found[place++] ?? ''));
      const asked = Object.entries(query).map(([name, value]) => `${name}=${encoded(value ?? '')}`);
      const url = asked.length > 0 ? `${named}?${asked.join('&')}` : named;
      const headers = Object.fromEntries(Object.entries(header).map(([name, value]) => [name, printable(value ?? '')]));
      if (method === 'GET' || method === 'DELETE') return { method, url, headers };
      return { method, url, headers: { ...headers, 'content-type': body.type }, payload: quiet(path, body.payload) };
    });
}

const oddText = fc.constantFrom(
  '',
  '%',
  '..',
  '\u0000',
  '9'.repeat(300),
  'null',
  '__proto__',
  '"1"',
  '"999"',
  'W/"1"',
  '-1',
  '1e9',
);

type Allowed = (schema: Schema) => fc.Arbitrary<unknown>;

interface Body {
  readonly type: string;
  readonly payload: string;
}

/** A body and what it says it is: right, as the schema allows, spoilt, any JSON, or no JSON. */
function bodiesOf(
  requestBody: Operation['requestBody'],
  allowed: Allowed,
  known: fc.Arbitrary<unknown> | undefined,
): fc.Arbitrary<Body> {
  const [[type, { schema }] = ['application/json', { schema: {} }]] = Object.entries(requestBody?.content ?? {});
  const drawn = allowed(schema);
  const right = known ?? drawn;
  const json = (values: fc.Arbitrary<unknown>) => values.map((value) => JSON.stringify(value) ?? '');
  return fc.record({
    type: fc.oneof(
      { weight: 20, arbitrary: fc.constant(type) },
      fc.constantFrom('application/json', 'text/plain', 'application/x-ndjson', 'text/html', 'x', ''),
    ),
    payload: fc.oneof(
      { weight: 4, arbitrary: json(right) },
      { weight: 3, arbitrary: json(drawn) },
      { weight: 8, arbitrary: json(spoilt(right)) },
      { weight: 2, arbitrary: json(oddValue) },
      { weight: 2, arbitrary: spoiltText(json(right)) },
      { weight: 1, arbitrary: anyText() },
    ),
  });
}

/** A thermometer that is switched on would be called over the network. */
function quiet(path: string, payload: string): string {
  return path.startsWith('/api/inputs') ? payload.replaceAll(/"on"\s*:\s*true/g, '"on":false') : payload;
}

/** As text within an address; a sign of per cent stays one, which makes the address unreadable. */
function encoded(text: string): string {
  return text === '%' ? text : encodeURIComponent(Buffer.from(text).toString()).slice(0, 2000);
}

function printable(text: string): string {
  return text.replaceAll(/[^\x20-\x7e]/g, '?').trim();
}
