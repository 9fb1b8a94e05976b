/** Where a person's cooks, kits and plans are kept: `UMBERPAN_DATA`, or the place that each system has for such data. */
import { join } from 'node:path';

export function dataFolder(
  env: Readonly<Record<string, string | undefined>>,
  platform: NodeJS.Platform,
  home: string,
): string {
  if (env['UMBERPAN_DATA']) return env['UMBERPAN_DATA'];
  if (env['XDG_DATA_HOME']) return join(env['XDG_DATA_HOME'], 'umberpan');
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Umberpan');
  if (platform === 'win32') return join(env['LOCALAPPDATA'] ?? join(home, 'AppData', 'Local'), 'Umberpan');
  return join(home, '.local', 'share', 'umberpan');
}
