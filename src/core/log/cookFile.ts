/**
 * A cook as a file: newline-delimited JSON, first a line about the file, then the events in true order, each in canonical
 * form and whole, with what this Umberpan does not know. Writing what was read gives the same bytes.
 */
import { canonicalJson, isCanonical } from './canonicalJson.ts';
import type { LogEvent, Stamp } from './event.ts';
import type { Sha256 } from './hashChain.ts';
import { instantMs } from './instant.ts';
import { inOrder } from './order.ts';

const format = 'umberpan-cook';
const formatVersion = 1;

/** When the server had it; absent for what was never sent to one. */
export type FiledEvent = LogEvent & Partial<Pick<Stamp, 'tServer'>>;

export type CookFile =
  | {
      readonly kind: 'cook';
      readonly cook: string;
      readonly events: readonly FiledEvent[];
      /** Each event as its client made it, without when the server had it, in canonical form. */
      readonly contents: readonly string[];
    }
  | { readonly kind: 'refused'; readonly line: number; readonly reason: string };

/** The file's text. Places and hashes of the store are left out: another store gives its own. */
export function writeCookFile(cook: string, events: readonly (LogEvent & Partial<Stamp>)[], sha256: Sha256): string {
  const filed = inOrder(events).map(({ event: { seq, prevHash, hash, ...event } }) => `${canonicalJson(event)}\n`);
  const about = { cook, events: filed.length, format, formatVersion, sha256: sha256(filed.join('')) };
  return `${canonicalJson(about)}\n${filed.join('')}`;
}

/** Reads a file, or says in which line it is not as it should be. */
export function readCookFile(text: string, sha256: Sha256): CookFile {
  const [first = '', ...lines] = text.split('\n');
  const about = parsed(first) as Partial<Record<string, unknown>> | undefined;
  if (about?.['format'] !== format) return refused(1, 'this is not the file of a cook');
  if (about['formatVersion'] !== formatVersion) {
    return refused(1, `the format's version is ${about['formatVersion']}; this Umberpan reads ${formatVersion}`);
  }
  const cook = about['cook'];
  if (typeof cook !== 'string') return refused(1, 'the cook is not named');
  if (lines.pop() !== '' || lines.length !== about['events']) {
    return refused(
      lines.length + 1,
      `the file has ${lines.length} of ${about['events']} events: it was cut off or added to`,
    );
  }
  const events: FiledEvent[] = [];
  for (const [place, line] of lines.entries()) {
    const event = parsed(line);
    const reason = event === undefined ? 'this is not JSON' : faultOf(event, line, cook);
    if (reason) return refused(place + 2, reason);
    events.push(event as FiledEvent);
  }
  if (sha256(text.slice(first.length + 1)) !== about['sha256']) {
    return refused(1, 'the events are not those that were written: the file was changed');
  }
  return { kind: 'cook', cook, events, contents: events.map((event, place) => contentOf(event, lines[place])) };
}

/** @param line the event in canonical form, so that taking a field out of it leaves the canonical form of the rest */
function contentOf(filed: FiledEvent, line: string): string {
  if (filed.tServer === undefined) return line;
  const field = `,"tServer":"${filed.tServer}"`;
  const at = line.indexOf(field);
  // The envelope has a field before it. If an inner object has the same field, the two can't be told apart.
  if (line.includes(field, at + 1)) return canonicalJson({ ...filed, tServer: undefined });
  return line.slice(0, at) + line.slice(at + field.length);
}

const isText = (value: unknown) => typeof value === 'string' && value.length > 0;
/** What a column of the store gives back as it was. */
const isPlainText = (value: unknown) => isText(value) && !/[\p{Cc}\p{Cs}]/u.test(value as string);
const isNumber = (value: unknown) => typeof value === 'number';
const isNumberOrNull = (value: unknown) => value === null || isNumber(value);
const isCount = (value: unknown) => Number.isSafeInteger(value) && (value as number) >= 1;

const envelope = Object.entries<(value: unknown) => boolean>({
  id: isPlainText,
  cook: isText,
  device: isText,
  deviceSeq: isCount,
  kind: isPlainText,
  v: isCount,
  tDevice: isInstant,
  tMono: isNumber,
  bootId: isText,
  clockOffsetMs: isNumberOrNull,
  clockErrMs: isNumberOrNull,
  tz: isText,
  body: (value) => typeof value === 'object' && value !== null && !Array.isArray(value),
  tServer: (value) => value === undefined || isInstant(value),
});

function faultOf(event: unknown, line: string, cook: string): string | undefined {
  if (typeof event !== 'object' || event === null) return 'this is no event';
  // Also refuses a field that is there twice, of which a reader sees one alone.
  if (!isCanonical(line, event)) return 'the event is not in canonical form';
  const fields = event as Record<string, unknown>;
  for (const [name, isRight] of envelope) {
    if (!isRight(fields[name])) return `${name} is missing or not as it should be`;
  }
  return fields['cook'] === cook ? undefined : 'the event belongs to another cook';
}

function isInstant(value: unknown): boolean {
  if (typeof value !== 'string') return false;
  try {
    instantMs(value);
    return true;
  } catch {
    return false;
  }
}

function parsed(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return undefined;
  }
}

function refused(line: number, reason: string): CookFile {
  return { kind: 'refused', line, reason };
}
