// No address leads out of the folder of pages.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { scratchFolder, testServer } from '../../test/testServer.ts';

const ups = [
  '..',
  '%2e%2e',
  '%2E.',
  '.%2e',
  '..%2f',
  '..%5c',
  '..\\',
  '%252e%252e',
  '..;',
  '....//',
  '%c0%ae%c0%ae',
  '\u2025',
];
const targets = ['secret.txt', 'etc/passwd', 'secret.txt%00.html', 'secret.txt?', 'secret.txt%23'];
const paths = ups.flatMap((up) => targets.map((target) => `/${up}/${up}/${target}`));
const odd = [
  '//secret.txt',
  '/assets/../../secret.txt',
  '/assets/%2e%2e/%2e%2e/secret.txt',
  '/%2fsecret.txt',
  '/C:%5csecret.txt',
];

it(`gives nothing for ${paths.length + odd.length} addresses that would lead out of it`, async () => {
  const outside = scratchFolder();
  const pages = join(outside, 'pages');
  mkdirSync(join(pages, 'assets'), { recursive: true });
  writeFileSync(join(pages, 'index.html'), '<!doctype html><title>Umberpan</title>');
  writeFileSync(join(outside, 'secret.txt'), 'a secret');
  const app = await testServer({ pages });
  expect((await app.inject('/index.html')).statusCode).toBe(200);
  for (const url of [...paths, ...odd]) {
    const answer = await app.inject({ url, headers: { accept: '*/*' } });
    expect([400, 404], url).toContain(answer.statusCode);
    expect(answer.body, url).not.toContain('a secret');
  }
});
