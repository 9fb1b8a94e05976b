/** What the alarms are judged by: where the cook stands, what the twin sees coming, and how the readings arrive. */
import type { Step } from '../../pan/steps.ts';
import { type Cooking, situationOf } from '../advise.ts';
import { type Outlook, outlook } from '../outlook.ts';
import { isOver } from '../progress.ts';
import type { ReadingDoubt } from './readingDoubt.ts';
import { type AlarmSettings, leadTimeS, usualAlarmSettings } from './settings.ts';

export interface WatchedReading {
  readonly valueC: number;
  readonly doubt: ReadingDoubt;
}

/** How readings come in, and who is at the stove: times are those of the cook, s. */
export interface Signs {
  readonly timeS: number;
  /** When a number last came from the thermometer, or the cook began; and when the twin last used one. */
  readonly receivedS: number;
  readonly usedS: number;
  /** How often a reading is due, and whether a person takes it. */
  readonly everyS: number;
  readonly byHand: boolean;
  /** The last readings, at least three, oldest first, as declared and as they seemed to the twin. */
  readonly lastReadings: readonly WatchedReading[];
  /** How far the two thermometers that differ most are apart, K; null unless two send. */
  readonly apartK: number | null;
  /** The cook reported foam, and not yet that it is quiet. */
  readonly foam: boolean;
  /** Last deed, answer or reading by hand. */
  readonly touchedS: number;
  /** Room left to record, bytes; null: unknown. */
  readonly freeBytes: number | null;
  readonly writeFailed: boolean;
}

export interface Watch extends Signs {
  readonly step: Step;
  readonly heatOn: boolean;
  readonly poured: boolean;
  /** In a hold: the band has been reached, and all alkali is in. */
  readonly holding: boolean;
  /** The last step is done: to be poured. */
  readonly ready: boolean;
  /** The syrup, middle of the twin, C. */
  readonly temperatureC: number;
  /** The coming minutes if nothing is done. */
  readonly ahead: Outlook;
}

/** A pan that will leave its last band this soon wants to be poured, s. */
export const closingWithinS = 120;
const rowEveryS = 30;
const members = 16;

export function watchOf(cooking: Cooking, signs: Signs, settings: AlarmSettings = usualAlarmSettings): Watch {
  const { twin, kit, steps, progress } = cooking;
  const step = steps[progress.stepIndex];
  const { temperatureC, solids } = situationOf(cooking);
  const rows = Math.ceil(Math.max(closingWithinS, leadTimeS(settings.lead)) / rowEveryS);
  const last = progress.stepIndex === steps.length - 1;
  return {
    ...signs,
    step,
    heatOn: twin.notch > 0,
    poured: progress.poured,
    holding: progress.inBandSinceS !== undefined && progress.partsGiven >= step.alkali.length,
    ready: last && !step.letDown && !progress.poured && isOver(progress, step, temperatureC, solids),
    temperatureC,
    ahead: outlook(twin, kit, [], { reactionS: 0, everyS: rowEveryS, rows, members }),
  };
}
