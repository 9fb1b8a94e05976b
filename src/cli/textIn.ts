/** Text from a file or standard input. */
import { readFileSync } from 'node:fs';

/**
 * @param file a path, or `-` for standard input
 * @param fail ends the command over what can't be read
 */
export function textIn(file: string, fail: (trouble: string) => never): string {
  try {
    return readFileSync(file === '-' ? 0 : file, 'utf8');
  } catch (error) {
    return fail(`can't be read (${(error as NodeJS.ErrnoException).code ?? error})`);
  }
}
