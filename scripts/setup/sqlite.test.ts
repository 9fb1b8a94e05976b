import { join } from 'node:path';
import { expect, it } from 'vitest';
import { addonKey, cacheFolder } from './sqlite.mjs';

it('addons for another version, Node, system, processor or C library are kept apart', () => {
  const one = { version: '12.11.1', abi: '115', platform: 'linux', arch: 'x64', libc: 'glibc' };
  const others = [{ version: '12.12.0' }, { abi: '127' }, { platform: 'darwin' }, { arch: 'arm64' }, { libc: 'musl' }];
  const keys = [one, ...others.map((other) => ({ ...one, ...other }))].map(addonKey);
  expect(new Set(keys).size).toBe(6);
  for (const key of keys) expect(key).toMatch(/^[\w.-]+$/);
});

it.each([
  [{ XDG_CACHE_HOME: 'xdg' }, 'linux', join('xdg', 'umberpan')],
  [{}, 'linux', join('home', '.cache', 'umberpan')],
  [{}, 'darwin', join('home', 'Library', 'Caches', 'umberpan')],
  [{ LOCALAPPDATA: 'local' }, 'win32', join('local', 'umberpan', 'Cache')],
])('the cache is where the system keeps caches: %o on %s', (env, platform, folder) => {
  expect(cacheFolder(env, platform, 'home')).toBe(folder);
});
