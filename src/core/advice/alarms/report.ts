/** What the alarms of a cook came to, so that limits can be tuned (ALM-14; rates as in ISA-18.2 and EEMUA 191). */
import { type AlarmId, alarmCatalogue, alarmIds, type Priority } from './catalogue.ts';
import type { AlarmChange } from './engine.ts';

export interface AlarmReport {
  /** How often alarms came, heard or not; how often one sounded for having come; and how often it did again for being unseen. */
  readonly came: number;
  readonly sounded: Readonly<Record<Priority, number>>;
  readonly soundedAgain: number;
  /** Most that sounded in any ten minutes, sounding again not counted. */
  readonly peakInTenMinutes: number;
  /** Alarms that came three times or more within a minute. */
  readonly chatterers: readonly AlarmId[];
  /** Longest from a first sound until it was seen or put aside, s. */
  readonly longestUnseenS: number;
  readonly putAsides: number;
}

const windowS = 600;
const chatterS = 60;
const chatterTimes = 3;

/** @param untilS end of the cook: what is unseen then has been unseen until then */
export function alarmReport(history: readonly AlarmChange[], untilS: number): AlarmReport {
  const times = (what: AlarmChange['what'], of?: AlarmId) =>
    history.filter((change) => change.what === what && (of ?? change.alarm) === change.alarm).map(({ timeS }) => timeS);
  const sounded = { 'act now': 0, 'act soon': 0, 'keep in mind': 0 };
  for (const { what, alarm } of history) if (what === 'sounded') sounded[alarmCatalogue[alarm].priority]++;
  return {
    came: times('came').length,
    sounded,
    soundedAgain: times('sounded again').length,
    peakInTenMinutes: mostWithin(times('sounded'), windowS),
    chatterers: alarmIds.filter((id) => mostWithin(times('came', id), chatterS) >= chatterTimes),
    longestUnseenS: Math.max(0, ...alarmIds.map((id) => longestUnseen(history, id, untilS))),
    putAsides: times('put aside').length,
  };
}

/** @param times rising */
function mostWithin(times: readonly number[], seconds: number): number {
  return Math.max(0, ...times.map((from, i) => times.slice(i).filter((t) => t < from + seconds).length));
}

function longestUnseen(history: readonly AlarmChange[], id: AlarmId, untilS: number): number {
  let longest = 0;
  let sinceS: number | null = null;
  for (const { timeS, alarm, what } of history) {
    if (alarm !== id) continue;
    if (what === 'sounded') sinceS ??= timeS;
    if (sinceS === null || (what !== 'seen' && what !== 'put aside')) continue;
    longest = Math.max(longest, timeS - sinceS);
    sinceS = null;
  }
  return sinceS === null ? longest : Math.max(longest, untilS - sinceS);
}
