import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { scratchFolder } from '../../../test/testServer.ts';
import { shellOf } from './shellPlugin.ts';

function build(files: Readonly<Record<string, string>>): string {
  const folder = scratchFolder();
  mkdirSync(join(folder, 'assets'));
  for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
  return folder;
}

const files = { 'index.html': '<p>', 'assets/a-1.js': '1', 'assets/a-1.js.map': '{}', 'service-worker.js': 'x' };

it('lists every file but maps and the worker itself, as the server names them', () => {
  expect(shellOf(build(files)).files).toEqual(['/assets/a-1.js', '/index.html']);
});

it('has another version when a file has other content or another name, and only then', () => {
  const { version } = shellOf(build(files));
  expect(shellOf(build({ ...files, 'assets/a-1.js.map': '{ }' })).version).toBe(version);
  expect(shellOf(build({ ...files, 'index.html': '<b>' })).version).not.toBe(version);
  const { 'assets/a-1.js': content, ...others } = files;
  expect(shellOf(build({ ...others, 'assets/a-2.js': content })).version).not.toBe(version);
});
