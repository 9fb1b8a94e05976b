/** A cook as it goes on, real or rehearsed: its log, the twin that follows it, the advice and the alarms. */
import type { LogEvent, Stamp } from '../log/event.ts';
import { type CookState, foldCook } from '../log/fold.ts';
import { createTelling } from '../twin/toldByLog.ts';
import { type Advice, adviseIn } from './advise.ts';
import type { AlarmId } from './alarms/catalogue.ts';
import { conditionsOf } from './alarms/conditions.ts';
import { type AlarmAct, type Alarms, noAlarms, stepAlarms } from './alarms/engine.ts';
import { type AlarmSettings, usualAlarmSettings } from './alarms/settings.ts';
import { type DeviceSigns, foamRises, lastReadS, signsOf } from './alarms/signs.ts';
import { watchOf } from './alarms/watch.ts';
import { createFollowed, type Followed, type FollowOptions } from './followed.ts';
import type { Horizon } from './outlook.ts';

export interface LiveCookOptions extends FollowOptions {
  readonly settings?: AlarmSettings;
}

export interface LiveCook {
  readonly followed: Followed;
  readonly state: CookState;
  readonly alarms: Alarms;
  /** Takes the log as it is now: what is new, late or corrected is gone by from its own time on. */
  hear(events: readonly (LogEvent & Partial<Stamp>)[]): void;
  advice(horizon?: Horizon): Advice;
  /** Time has gone on; alarms are judged. */
  moveTo(timeS: number, device?: DeviceSigns): void;
}

/** Without events the twin is carried on in strides of this, and stays this far behind: what arrives a little late is then in time, s. */
const strideS = 10;
const behindS = 5;
const allIsWell: DeviceSigns = { freeBytes: null, writeFailed: false };

export function createLiveCook({ settings = usualAlarmSettings, ...options }: LiveCookOptions): LiveCook {
  const followed = createFollowed(options);
  const telling = createTelling();
  const actsTaken = new Set<string>();
  let state = foldCook([]);
  let alarms = noAlarms;
  let judgedS = 0;

  /** What was done about alarms since they were last judged. */
  function newActs(): AlarmAct[] {
    const entries = [...state.seen, ...state.putAside].filter(({ id }) => !actsTaken.has(id));
    for (const { id } of entries) actsTaken.add(id);
    return entries.map(({ kind, body }) => ({ kind, ...body }) as AlarmAct);
  }

  return {
    followed,
    get state() {
      return state;
    },
    get alarms() {
      return alarms;
    },
    hear(events) {
      state = foldCook(events);
      followed.follow(telling(state));
    },
    advice(horizon) {
      const on = (id: AlarmId): boolean => alarms.states[id].on;
      const troubles = {
        foam: foamRises(state),
        unreadS: judgedS - lastReadS(state),
        blind: (['probeLost', 'probeDoubtful', 'probesApart', 'unitMixUp'] as const).some(on),
      };
      return adviseIn(troubles, followed, horizon);
    },
    moveTo(timeS, device = allIsWell) {
      if (timeS - followed.twin.timeS >= strideS + behindS) followed.moveTo(timeS - behindS);
      if (timeS < judgedS) return;
      judgedS = timeS;
      const watch = watchOf(followed, signsOf(state, followed, timeS, device), settings);
      const conditions = conditionsOf(watch, alarms, settings);
      alarms = stepAlarms(alarms, { timeS, step: watch.step.kind, conditions, acts: newActs() });
    },
  };
}
