/**
 * The log of a cook as a file, of what this device holds. It needs no server, so that a cook whose server never comes back can be
 * carried to another one; and no secure origin, where alone browsers can hash by themselves.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { writeCookFile } from '../../core/log/cookFile.ts';
import type { LogEvent, Stamp } from '../../core/log/event.ts';
import { fileName, saveAs } from './saveAs.ts';

export function saveLog(cook: string, name: string, events: readonly (LogEvent & Partial<Stamp>)[]): void {
  const text = writeCookFile(cook, events, (content) => bytesToHex(sha256(utf8ToBytes(content))));
  saveAs(`${fileName(name)}.ndjson`, new Blob([text], { type: 'application/x-ndjson' }));
}
