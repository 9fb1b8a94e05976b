/** Writes a kit with what was learned or measured of it to a file. */
import { writeFileSync } from 'node:fs';
import { Stop } from '../stop.ts';

export function writeKit(file: string, kit: object): void {
  try {
    writeFileSync(file, `${JSON.stringify(kit, undefined, 2)}\n`);
  } catch (error) {
    const trouble = (error as NodeJS.ErrnoException).code ?? error;
    const message = `--write ${file}: can't be written (${trouble})`;
    throw new Stop({ kind: 'failed', field: '--write', value: file, message });
  }
}
