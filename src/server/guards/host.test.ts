import { expect, it } from 'vitest';
import { testServer } from '../../../test/testServer.ts';
import { isKnown } from './host.ts';

it.each(['localhost', 'localhost:80', '127.0.0.1', '[::1]', 'LOCALHOST', 'kitchen.local:80'])(
  'answers to %s',
  async (host) => {
    const app = await testServer({ names: ['kitchen.local'] });
    expect((await app.inject({ url: '/api/health', headers: { host } })).statusCode).toBe(200);
  },
);

it.each([
  'evil.test',
  'evil.test:80',
  'localhost:81',
  'localhost.evil.test',
  'localhost.',
  'localhost:80:80',
  'localhost@evil.test',
  '127.0.0.2',
  '[::2]',
  '::1',
])('does not answer to %o, and tells nothing', async (host) => {
  const app = await testServer({ names: ['kitchen.local'] });
  const answer = await app.inject({ url: '/api/kits', headers: { host } });
  expect(answer.statusCode).toBe(421);
  expect(answer.json()).not.toHaveProperty('kits');
});

it('wants the port that it listens at', () => {
  const names = new Set(['localhost']);
  expect(isKnown('localhost:8327', names, 8327)).toBe(true);
  expect(isKnown('localhost', names, 8327)).toBe(false);
  expect(isKnown('localhost:8328', names, 8327)).toBe(false);
  expect(isKnown('', names, 80)).toBe(false);
  expect(isKnown(undefined, names, 80)).toBe(false);
});
