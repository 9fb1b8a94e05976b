/** From what is watched to the condition of every alarm in the catalogue. */

import { apartK } from '../../log/probesApart.ts';
import { surpriseLimit } from '../../twin/ensemble.ts';
import { limits } from '../limits.ts';
import { shareEverAbove, shareEverOutside, upTo } from '../outlook.ts';
import { type AlarmId, type AlarmKind, alarmCatalogue } from './catalogue.ts';
import type { Alarms, Condition } from './engine.ts';
import { type AlarmSettings, leadTimeS, usualAlarmSettings } from './settings.ts';
import { closingWithinS, type Watch } from './watch.ts';

/** More likely than not. */
const likely = 0.5;
/** A reading this near is not strange, in standard deviations; so many in a row decide on the thermometer. */
const usual = 2;
const inARow = 3;
/** Two readings in a row this far above the limit count even if the twin does not believe them, K. */
const overK = 2;
const leastFreeBytes = 50e6;
/** A sensor is lost after three intervals and at least this long, s. */
const leastLostS = 15;

/** @param alarms as they are: the dead band of a condition counts while its alarm is on */
export function conditionsOf(
  watch: Watch,
  { states }: Alarms,
  settings: AlarmSettings = usualAlarmSettings,
): Record<AlarmId, Condition> {
  const { timeS, step, poured, heatOn } = watch;
  const slack = (id: AlarmId): number => (states[id].on ? ((alarmCatalogue[id] as AlarmKind).deadBandK ?? 0) : 0);
  /** An all-clear needs readings that the twin could use. */
  const blind = timeS - watch.usedS > lostAfterS(watch);
  const unlessBlind = (active: boolean): Condition => ({ active: !poured && (blind ? null : active) });

  const limitC = limits.roastTemperature.value - slack('scorch');
  const scorching = shareEverAbove(upTo(watch.ahead, leadTimeS(settings.lead)), limitC);
  const isScorching = scorching > likely || readsOver(watch, limitC + overK);
  const leaving = shareEverOutside(upTo(watch.ahead, closingWithinS), step.bandC);
  const closing = watch.ready && leaving > likely;
  return {
    scorch: { ...(isScorching && !poured ? { active: true } : unlessBlind(false)), certainty: scorching },
    foam: { active: watch.foam && !poured },
    unattended: { active: heatOn && timeS - watch.touchedS >= settings.askAfterS + settings.answerWithinS },
    probeLost: { active: heatOn && !poured && timeS - watch.receivedS > lostAfterS(watch) },
    unitMixUp: poured ? { active: false } : mixUp(watch),
    probesApart: { active: heatOn && !poured && (watch.apartK ?? 0) > apartK },
    probeDoubtful: { active: !poured && isDoubtful(watch.lastReadings, states.probeDoubtful.on) },
    aboveBand: unlessBlind(isHold(watch) && watch.temperatureC > step.bandC[1] - slack('aboveBand')),
    belowBand: unlessBlind(isHold(watch) && watch.holding && watch.temperatureC < step.bandC[0] + slack('belowBand')),
    castClosing: { active: closing, certainty: watch.ready ? leaving : 0 },
    storageTrouble: { active: watch.writeFailed || (watch.freeBytes ?? Number.POSITIVE_INFINITY) < leastFreeBytes },
  };
}

function lostAfterS({ byHand, everyS }: Watch): number {
  return byHand ? 2 * everyS : Math.max(leastLostS, 3 * everyS);
}

function isHold({ step }: Watch): boolean {
  return 'heldMinutes' in step.end && !step.letDown;
}

function mixUp({ lastReadings }: Watch): Condition {
  const other = lastReadings.at(-1)?.doubt.otherUnit;
  return other ? { active: true, certainty: 1 / (1 + 1 / other.ratio) } : { active: false };
}

/** Readings in another unit are not strange: they have an alarm of their own. */
function isDoubtful(readings: Watch['lastReadings'], on: boolean): boolean {
  const last = readings.slice(-inARow).map(({ doubt }) => (doubt.otherUnit ? 0 : Math.abs(doubt.surprise)));
  return on ? last.some((s) => s > usual) : last.length === inARow && last.every((s) => s > surpriseLimit);
}

/** By the thermometer alone, unless it seems to show another unit. */
function readsOver({ lastReadings }: Watch, limitC: number): boolean {
  const last = lastReadings.slice(-2);
  return last.length === 2 && last.every(({ valueC, doubt }) => !doubt.otherUnit && valueC > limitC);
}
