import { join } from 'node:path';
import { expect, it } from 'vitest';
import { dataFolder } from './dataFolder.ts';

it.each([
  ['UMBERPAN_DATA first', { UMBERPAN_DATA: 'here', XDG_DATA_HOME: 'xdg' }, 'linux', 'here'],
  ['then the XDG folder', { XDG_DATA_HOME: 'xdg' }, 'linux', join('xdg', 'umberpan')],
  ['then that of Linux', {}, 'linux', join('home', '.local', 'share', 'umberpan')],
  ['of macOS', {}, 'darwin', join('home', 'Library', 'Application Support', 'Umberpan')],
  ['of Windows', { LOCALAPPDATA: 'local' }, 'win32', join('local', 'Umberpan')],
] as const)('data are kept in %s', (_, env, platform, folder) => {
  expect(dataFolder(env, platform, 'home')).toBe(folder);
});
