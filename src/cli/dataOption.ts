/** The data folder that a command works on: the one that was named, or the usual one. */
import { homedir } from 'node:os';
import { dataFolder } from '../server/dataFolder.ts';
import { Stop } from './stop.ts';

export function folderOf(given: string | undefined): string {
  return given ?? dataFolder(process.env, process.platform, homedir());
}

/** What to do with a failure of a data folder: end, naming the folder. */
export function folderFailed(folder: string): (error: unknown) => never {
  return (error) => {
    const message = error instanceof Error ? error.message : String(error);
    throw new Stop({ kind: 'failed', field: '--data', value: folder, message });
  };
}
