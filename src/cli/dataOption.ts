/** The data folder that a command works on: the one that was named, or the usual one. */
import { homedir } from 'node:os';
import { dataFolder } from '../server/dataFolder.ts';

export function folderOf(given: string | undefined): string {
  return given ?? dataFolder(process.env, process.platform, homedir());
}
