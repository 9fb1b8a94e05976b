import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { scratchFolder, testServer } from '../../test/testServer.ts';
import { defaultKit } from '../core/pan/kit.ts';

it('says that it is up, and which version it is', async () => {
  const app = await testServer();
  const answer = await app.inject('/api/health');
  expect(answer.statusCode).toBe(200);
  expect(answer.json()).toEqual({ status: 'up', version: expect.stringMatching(/^\d+\.\d+\.\d+/) });
});

it.each([
  ['form post', { 'content-type': 'application/x-www-form-urlencoded' }, 'name=x'],
  ['plain text', { 'content-type': 'text/plain' }, JSON.stringify(defaultKit)],
  ['no type at all', {}, JSON.stringify(defaultKit)],
])('takes JSON alone: %s is refused and nothing is written', async (_, headers, payload) => {
  const app = await testServer();
  const answer = await app.inject({ method: 'POST', url: '/api/kits', headers, payload });
  expect(answer.statusCode).toBe(415);
  expect(answer.json()).toMatchObject({ type: '/api/problems#media-type', status: 415 });
  expect((await app.inject('/api/kits')).json()).toEqual({ kits: [] });
});

it.each([
  ['a body over 256 kB', 413, '/api/kits', JSON.stringify({ name: 'x'.repeat(300_000) })],
  ['a body that is no JSON', 400, '/api/kits', '{"name": '],
  ['a body that would change the prototype', 400, '/api/kits', '{"__proto__": {"polluted": true}}'],
  ['an address over 4 kB', 414, `/api/kits?${'x'.repeat(5000)}`, JSON.stringify(defaultKit)],
  ['an address that is not there', 404, '/api/nowhere', '{}'],
])('refuses %s with a problem document', async (_, status, url, payload) => {
  const app = await testServer();
  const answer = await app.inject({ method: 'POST', url, headers: { 'content-type': 'application/json' }, payload });
  expect(answer.statusCode).toBe(status);
  expect(answer.headers['content-type']).toContain('application/problem+json');
  expect(answer.json()).toMatchObject({ status, instance: expect.stringMatching(/^urn:uuid:/) });
});

it.each(['/%zz', '/api/kits/%', '/%ff'])(
  'says what is wrong with the address %s in a problem document',
  async (url) => {
    const app = await testServer();
    const answer = await app.inject(url);
    expect(answer.statusCode).toBe(400);
    expect(answer.headers['content-type']).toContain('application/problem+json');
    expect(answer.headers['x-content-type-options']).toBe('nosniff');
    expect(answer.json()).toMatchObject({
      type: '/api/problems#bad-request',
      status: 400,
      detail: expect.stringContaining('%20'),
      instance: expect.stringMatching(/^urn:uuid:/),
    });
  },
);

it('refuses an id that is far too long with a problem document', async () => {
  const app = await testServer();
  const answer = await app.inject(`/api/kits/${'x'.repeat(200)}`);
  expect(answer.statusCode).toBe(414);
  expect(answer.headers['content-type']).toContain('application/problem+json');
});

it.each([
  ['POST', '/api/cooks/import', 'application/json', 'application/x-ndjson'],
  ['POST', '/api/cooks/import', 'text/plain', 'application/x-ndjson'],
  ['POST', '/api/kits', 'application/x-ndjson', 'application/json'],
  ['POST', '/api/plans', 'text/plain', 'application/json'],
  ['POST', '/api/cooks', 'text/plain', 'application/json'],
  ['POST', '/api/readings', 'application/xml', 'application/json, text/plain'],
] as const)('%s %s with %s is refused, naming %s', async (method, url, type, allowed) => {
  const app = await testServer();
  const answer = await app.inject({ method, url, headers: { 'content-type': type }, payload: '{}' });
  expect(answer.statusCode).toBe(415);
  expect(answer.headers['accept']).toBe(allowed);
  expect(answer.json()).toMatchObject({
    type: '/api/problems#media-type',
    detail: `Content-Type is ${type}; allowed: ${allowed}.`,
  });
});

it.each([
  '/api/plans?limit=abc',
  '/api/cooks?limit=NaN',
  '/api/cooks/00000000-0000-4000-8000-000000000000/events?since=-1',
  '/api/cooks/00000000-0000-4000-8000-000000000000/live?since=x',
])('%s names the number, what was sent and what is allowed', async (url) => {
  const app = await testServer();
  const answer = await app.inject(url);
  expect(answer.statusCode).toBe(400);
  const [{ field, message }] = answer.json().errors;
  expect(message).toMatch(new RegExp(`^${field} is .+; allowed: a whole number from \\d+ to \\d+$`));
});

it.each([
  ['/api/readings?unit=C&unit=F', 'text/plain', '120'],
  ['/api/readings', 'application/json', '[1]'],
  ['/api/readings', 'application/json', '{"unit": "C", "value": true, "mood": 1}'],
  ['/api/kits', 'application/json', 'null'],
  ['/api/kits', 'application/json', '{"name": '],
  ['/api/kits', 'application/json', ''],
])('answers %s of %s %s in its own words', async (url, type, payload) => {
  const app = await testServer();
  const answer = await app.inject({ method: 'POST', url, headers: { 'content-type': type }, payload });
  expect(answer.statusCode).toBe(400);
  const { detail, errors = [] } = answer.json();
  for (const text of [detail, ...errors.map(({ message }: { message: string }) => message)]) {
    expect(text).not.toMatch(/Invalid|expected|received|Unrecognized|Unexpected|content-type is set/);
  }
});

it('describes itself in OpenAPI 3.1, where every reference leads somewhere', async () => {
  const app = await testServer();
  const document = (await app.inject('/api/openapi.json')).json();
  expect(document.openapi).toMatch(/^3\.1\./);
  expect(Object.keys(document.paths).toSorted()).toEqual([
    '/api/authority',
    '/api/book',
    '/api/book/beers',
    '/api/cooks',
    '/api/cooks/import',
    '/api/cooks/whole',
    '/api/cooks/{id}',
    '/api/cooks/{id}/events',
    '/api/cooks/{id}/file',
    '/api/cooks/{id}/live',
    '/api/demo',
    '/api/devices',
    '/api/devices/{id}',
    '/api/devices/{id}/cook',
    '/api/glasses',
    '/api/glasses/{id}',
    '/api/glasses/{id}/reminders.ics',
    '/api/glasses/{id}/tastings',
    '/api/glasses/{id}/tastings/{tastingId}',
    '/api/health',
    '/api/inputs',
    '/api/inputs/ports',
    '/api/inputs/{id}',
    '/api/invitations',
    '/api/kits',
    '/api/kits/{id}',
    '/api/lots',
    '/api/lots/{id}',
    '/api/lots/{id}/notes',
    '/api/lots/{id}/notes/{noteId}',
    '/api/lots/{id}/restore',
    '/api/pairing',
    '/api/plans',
    '/api/plans/{id}',
    '/api/problems',
    '/api/readings',
    '/api/standing',
    '/api/time',
    '/api/workspace',
  ]);
  const references = [...JSON.stringify(document).matchAll(/"\$ref":"#\/components\/schemas\/(\w+)"/g)];
  expect(references.length).toBeGreaterThan(5);
  const names = Object.keys(document.components.schemas);
  for (const [, name] of references) expect(names).toContain(name);
  expect(names.filter((name) => name.endsWith('Input'))).toEqual([]);
});

it('has a problem document for each kind that it lists', async () => {
  const app = await testServer();
  const kinds = (await app.inject('/api/problems')).json();
  const problem = (await app.inject('/api/kits/00000000-0000-4000-8000-000000000000')).json();
  expect(kinds[problem.type.split('#')[1]]).toEqual({ status: problem.status, title: problem.title });
});

it('keeps hashed files for ever, the page never, and leads every place of the app to the page', async () => {
  const pages = scratchFolder();
  mkdirSync(join(pages, 'assets'));
  writeFileSync(join(pages, 'index.html'), '<title>page</title>');
  writeFileSync(join(pages, 'assets', 'main-aB3_x-9Z.js'), 'export {}');
  const app = await testServer({ pages });
  expect((await app.inject('/assets/main-aB3_x-9Z.js')).headers['cache-control']).toContain('immutable');
  for (const url of ['/', '/stove', '/shelf/1']) {
    const answer = await app.inject({ url, headers: { accept: 'text/html' } });
    expect(answer.body).toBe('<title>page</title>');
    expect(answer.headers['cache-control']).toBe('no-cache');
  }
  expect((await app.inject({ url: '/api/x', headers: { accept: 'text/html' } })).statusCode).toBe(404);
});

it.each([
  '/../package.json',
  '/..%2f..%2fpackage.json',
  '/%2e%2e/%2e%2e/package.json',
  '/assets/..%5c..%5cx',
  '/a%00b',
])('serves no file outside the pages: %s', async (url) => {
  const pages = scratchFolder();
  writeFileSync(join(pages, 'index.html'), '');
  const app = await testServer({ pages });
  const answer = await app.inject(url);
  expect(answer.statusCode).toBeGreaterThanOrEqual(400);
  expect(answer.statusCode).toBeLessThan(500);
});
