/** Codes that let a device in: eight characters, once, for ten minutes, and few tries. They are kept in memory alone. */
import { randomInt } from 'node:crypto';
import type { Invitation } from '../../api/device.ts';
import { Refusal } from '../problem.ts';

/** 32 letters and digits that are not mistaken for one another: eight of them are 40 bits. */
const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const length = 8;
const lastsMs = 10 * 60_000;
/** Wrong codes in a row before a pause, and how long that is; wrong codes in an hour. */
const triesInARow = 5;
const pauseMs = 60_000;
const triesAnHour = 20;
const hourMs = 3_600_000;
/** Codes that count at a time. */
const mostOpen = 20;

export interface Invited extends Invitation {
  readonly cook: string | null;
  readonly code: string;
  readonly endsMs: number;
}

export type Invitations = ReturnType<typeof openInvitations>;

export function openInvitations(nowMs: () => number) {
  const open = new Map<string, Invited>();
  /** When a wrong code was tried, within the last hour. */
  let wrong: number[] = [];
  let inARow = 0;
  let pausedUntilMs = 0;

  function dropOld() {
    for (const { code, endsMs } of open.values()) if (endsMs <= nowMs()) open.delete(code);
    while (open.size >= mostOpen) open.delete([...open.keys()][0] ?? '');
  }

  function refuseTooMany() {
    wrong = wrong.filter((atMs) => atMs > nowMs() - hourMs);
    const pauseEndsMs = Math.max(pausedUntilMs, wrong.length >= triesAnHour ? (wrong[0] ?? 0) + hourMs : 0);
    const waitS = Math.ceil((pauseEndsMs - nowMs()) / 1000);
    if (waitS <= 0) return;
    throw new Refusal('too-many-tries', `Wrong codes were tried; the next counts in ${waitS} s.`, {}, waitS);
  }

  function noteWrong(): never {
    wrong.push(nowMs());
    inARow += 1;
    if (inARow >= triesInARow) {
      inARow = 0;
      pausedUntilMs = nowMs() + pauseMs;
    }
    throw new Refusal('code-refused', 'It was used, its ten minutes are over, or it was mistyped. Ask for a new one.');
  }

  return {
    invite({ role, hours, cook = role === 'probe' ? 'next' : null }: Invitation): Invited {
      dropOld();
      const code = Array.from({ length }, () => alphabet[randomInt(alphabet.length)]).join('');
      const invited = { role, hours, cook, code, endsMs: nowMs() + lastsMs };
      open.set(code, invited);
      return invited;
    },

    /** Uses a code up. @throws Refusal for one that does not count, or after too many of those */
    use(code: string): Invited {
      refuseTooMany();
      const invited = open.get(code);
      open.delete(code);
      if (!invited || invited.endsMs <= nowMs()) return noteWrong();
      inARow = 0;
      return invited;
    },
  };
}
