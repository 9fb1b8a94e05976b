// What every answer says about how a browser may use it: each address of the OpenAPI document and the pages, asked on this machine and from the network.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { scratchFolder, testServer } from '../../test/testServer.ts';

const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data:",
  "connect-src 'self'",
  "font-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
  "object-src 'none'",
].join(';');

/** Over plain http browsers would be sent away, keep nothing, or be let in from elsewhere. */
const never = /^(strict-transport-security|set-cookie|access-control-|server$|x-powered-by)/;

it.each([
  ['this machine', 'localhost:80', 'same-origin'],
  ['the network', 'pan.test:80', undefined],
])('on %s every answer lets our own scripts and styles run and nothing else', async (_, host, opener) => {
  const pages = scratchFolder();
  writeFileSync(join(pages, 'index.html'), '<!doctype html>');
  const app = await testServer({ names: ['pan.test'], pages });
  const { paths } = (await app.inject('/api/openapi.json')).json() as { paths: Record<string, object> };
  const noSuchId = '00000000-0000-4000-8000-000000000000';
  const addresses = Object.keys(paths).map((path) => path.replaceAll(/\{\w+\}/g, noSuchId));
  for (const url of [...addresses, '/', '/index.html', '/stove', '/nowhere.js', '/api/nowhere']) {
    const { headers } = await app.inject({ url, headers: { host, accept: 'text/html' } });
    expect(headers, url).toMatchObject({
      'content-security-policy': policy,
      'x-content-type-options': 'nosniff',
      'x-frame-options': 'DENY',
      'referrer-policy': 'no-referrer',
      'cross-origin-resource-policy': 'same-origin',
      'permissions-policy': expect.stringContaining('geolocation=()'),
      ...(url.startsWith('/api/') && { 'cache-control': 'no-store' }),
    });
    expect(headers['cross-origin-opener-policy'], url).toBe(opener);
    expect(
      Object.keys(headers).filter((name) => never.test(name)),
      url,
    ).toEqual([]);
  }
});
