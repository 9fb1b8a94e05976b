import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { scratchFolder } from '../../test/testServer.ts';
import { hashOf, onceFor } from './stamp.mjs';

function folderWithFiles() {
  const folder = scratchFolder();
  mkdirSync(join(folder, 'src'));
  writeFileSync(join(folder, 'src', 'a.ts'), 'a');
  writeFileSync(join(folder, 'src', 'a.test.ts'), 'test');
  return folder;
}

it('the hash changes with the content, name and number of files, and with nothing else', () => {
  const folder = folderWithFiles();
  const seen = [hashOf(folder, ['src'])];
  expect(hashOf(folder, ['src', 'absent'])).toBe(seen[0]);
  writeFileSync(join(folder, 'src', 'a.ts'), 'b');
  seen.push(hashOf(folder, ['src']));
  renameSync(join(folder, 'src', 'a.ts'), join(folder, 'src', 'b.ts'));
  seen.push(hashOf(folder, ['src']));
  writeFileSync(join(folder, 'src', 'c.ts'), '');
  seen.push(hashOf(folder, ['src']));
  expect(new Set(seen).size).toBe(4);
});

it('files that do not count do not change the hash', () => {
  const folder = folderWithFiles();
  const counts = (name: string) => !name.endsWith('.test.ts');
  const before = hashOf(folder, ['src'], counts);
  rmSync(join(folder, 'src', 'a.test.ts'));
  expect(hashOf(folder, ['src'], counts)).toBe(before);
});

it('a job is done once for the same inputs, and again after it failed', async () => {
  const stamp = join(scratchFolder(), 'deep', 'stamp');
  const done: string[] = [];
  await onceFor(stamp, 'one', async () => void done.push('first'));
  await onceFor(stamp, 'one', async () => void done.push('again'));
  await expect(onceFor(stamp, 'two', () => Promise.reject(new Error('broken')))).rejects.toThrow('broken');
  await onceFor(stamp, 'one', async () => void done.push('after the failure'));
  expect(done).toEqual(['first', 'after the failure']);
});
