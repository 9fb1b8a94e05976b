import { describe, expect, it } from 'vitest';
import { type AlarmId, alarmIds } from '../../../../core/advice/alarms/catalogue.ts';
import { type AlarmAct, type Alarms, noAlarms, stepAlarms } from '../../../../core/advice/alarms/engine.ts';
import type { StepKind } from '../../../../core/pan/steps.ts';
import { alarmView } from './alarmOrder.ts';

/** Through the real engine, a second at a time. */
function lived(from: Alarms, untilS: number, fromS: number, on: readonly AlarmId[], acts: readonly AlarmAct[] = []) {
  let alarms = from;
  for (let timeS = fromS; timeS <= untilS; timeS++) alarms = stepped(alarms, timeS, on, timeS === fromS ? acts : []);
  return alarms;
}

function stepped(
  alarms: Alarms,
  timeS: number,
  on: readonly AlarmId[],
  acts: readonly AlarmAct[],
  step: StepKind = 'brown',
) {
  const conditions = Object.fromEntries(alarmIds.map((id) => [id, { active: on.includes(id) }])) as never;
  return stepAlarms(alarms, { timeS, step, conditions, acts });
}

const ids = (view: ReturnType<typeof alarmView>) => view.groups.map(({ id }) => id);

describe('alarms on view', () => {
  it('are none in a calm cook', () => {
    expect(alarmView(noAlarms)).toEqual({ groups: [], top: undefined, more: 0, moreUnseen: 0, asides: 0 });
  });

  it('stand with the most urgent on top, and among equals with the first that came', () => {
    const first = lived(noAlarms, 20, 0, ['storageTrouble']);
    const both = lived(first, 60, 21, ['storageTrouble', 'probeLost']);
    expect(ids(alarmView(both))).toEqual(['storageTrouble', 'probeLost']);
    const withFoam = lived(both, 61, 61, ['storageTrouble', 'probeLost', 'foam']);
    expect(ids(alarmView(withFoam))).toEqual(['foam', 'storageTrouble', 'probeLost']);
    expect(alarmView(withFoam)).toMatchObject({ more: 2, moreUnseen: 2 });
  });

  it('put what is new before what has been seen', () => {
    const foam = lived(noAlarms, 1, 0, ['foam']);
    const seen = lived(foam, 20, 2, ['foam', 'storageTrouble'], [{ kind: 'seen', alarm: 'foam' }]);
    expect(alarmView(seen).top?.id).toBe('storageTrouble');
    const both = lived(seen, 21, 21, ['foam', 'storageTrouble'], [{ kind: 'seen', alarm: 'storageTrouble' }]);
    expect(alarmView(both).top?.id).toBe('foam');
    expect(alarmView(both)).toMatchObject({ more: 1, moreUnseen: 0 });
  });

  it('group consequences below the one that names the cause', () => {
    const alarms = lived(noAlarms, 60, 0, ['probeLost', 'belowBand']);
    const view = alarmView(alarms);
    expect(ids(view)).toEqual(['probeLost']);
    expect(view.groups[0]?.below.map(({ id }) => id)).toEqual(['belowBand']);
    expect(view).toMatchObject({ more: 1, moreUnseen: 0 });
  });

  it('keep what is over on view until it is seen', () => {
    const over = lived(lived(noAlarms, 1, 0, ['foam']), 30, 2, []);
    expect(alarmView(over).top).toMatchObject({ id: 'foam', state: { phase: 'gone unseen', on: false } });
    expect(alarmView(lived(over, 31, 31, [], [{ kind: 'seen', alarm: 'foam' }])).top).toBeUndefined();
  });

  it('count what is put aside, never on top, even when it is over for now', () => {
    const on = lived(noAlarms, 40, 0, ['belowBand']);
    const aside = lived(on, 41, 41, ['belowBand'], [{ kind: 'putAside', alarm: 'belowBand', forS: 300 }]);
    expect(alarmView(aside)).toMatchObject({ top: undefined, asides: 1, more: 0 });
    expect(alarmView(lived(aside, 80, 42, []))).toMatchObject({ asides: 1 });
    expect(alarmView(lived(aside, 341, 42, ['belowBand'])).top?.id).toBe('belowBand');
  });

  it('leave out what is silent in this step', () => {
    let alarms = noAlarms;
    for (let timeS = 0; timeS < 60; timeS++) alarms = stepped(alarms, timeS, ['aboveBand'], [], 'dissolve');
    expect(alarms.states.aboveBand.on).toBe(true);
    expect(alarmView(alarms).groups).toEqual([]);
  });
});
