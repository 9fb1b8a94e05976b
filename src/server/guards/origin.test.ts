import { expect, it } from 'vitest';
import { testServer } from '../../../test/testServer.ts';
import { defaultKit } from '../../core/pan/kit.ts';

async function post(headers: Record<string, string>) {
  const app = await testServer();
  const answer = await app.inject({ method: 'POST', url: '/api/kits', headers, payload: defaultKit });
  const kept = (await app.inject('/api/kits')).json().kits.length;
  return { status: answer.statusCode, kept };
}

it.each([
  ['its own page', { origin: 'http://localhost:80', host: 'localhost:80', 'sec-fetch-site': 'same-origin' }],
  ['a program that is no browser', {}],
])('lets %s write', async (_, headers) => {
  expect(await post(headers)).toEqual({ status: 201, kept: 1 });
});

it.each([
  ['a page of another site', { origin: 'http://evil.test', host: 'localhost:80' }],
  ['a page on another port', { origin: 'http://localhost:81', host: 'localhost:80' }],
  ['a page over another protocol', { origin: 'https://localhost:80', host: 'localhost:80' }],
  ['a page without an origin of its own', { origin: 'null', host: 'localhost:80' }],
  ['a page that the browser calls foreign', { 'sec-fetch-site': 'cross-site' }],
  ['a page of a neighbouring name', { 'sec-fetch-site': 'same-site' }],
])('does not let %s write', async (_, headers) => {
  expect(await post(headers)).toEqual({ status: 403, kept: 0 });
});

it('gives no page of another site leave to ask', async () => {
  const app = await testServer();
  const headers = { origin: 'http://evil.test', 'access-control-request-method': 'POST' };
  const answer = await app.inject({ method: 'OPTIONS', url: '/api/kits', headers });
  expect(answer.statusCode).toBe(404);
  expect(answer.headers).not.toHaveProperty('access-control-allow-origin');
});
