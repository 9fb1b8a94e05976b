import { describe, expect, it } from 'vitest';
import { type AlarmId, alarmIds } from '../../../../core/advice/alarms/catalogue.ts';
import { type AlarmAct, type Alarms, noAlarms, stepAlarms } from '../../../../core/advice/alarms/engine.ts';
import { isNewAdvice, newlySounded, stillUnseen } from './whatSounds.ts';

function step(alarms: Alarms, timeS: number, on: readonly AlarmId[], acts: readonly AlarmAct[] = []): Alarms {
  const conditions = Object.fromEntries(alarmIds.map((id) => [id, { active: on.includes(id) }])) as never;
  return stepAlarms(alarms, { timeS, step: 'brown', conditions, acts });
}

describe('what is heard', () => {
  it('is an alarm once for each time it sounds, however often the page looks', () => {
    const came = step(noAlarms, 0, ['foam']);
    expect(newlySounded(noAlarms.states, came)).toEqual(['foam']);
    expect(newlySounded(came.states, came)).toEqual([]);
    const later = step(came, 10, ['foam']);
    expect(newlySounded(came.states, later)).toEqual([]);
    const again = step(later, 30, ['foam']);
    expect(newlySounded(later.states, again)).toEqual(['foam']);
  });

  it('is also what sounded in steps that the page did not see', () => {
    const came = step(noAlarms, 0, ['foam']);
    const later = step(came, 1, ['foam']);
    expect(later.sounding).toEqual([]);
    expect(newlySounded(noAlarms.states, later)).toEqual(['foam']);
  });

  it('is not what has been seen meanwhile, as on another device', () => {
    const seen = step(step(noAlarms, 0, ['foam']), 1, ['foam'], [{ kind: 'seen', alarm: 'foam' }]);
    expect(newlySounded(noAlarms.states, seen)).toEqual([]);
  });

  it('begins with the loudest', () => {
    let alarms = step(noAlarms, 0, ['storageTrouble']);
    alarms = step(alarms, 5, ['storageTrouble', 'foam']);
    expect(newlySounded(noAlarms.states, alarms)).toEqual(['foam', 'storageTrouble']);
  });

  it('is only what sounds now when the page has just been opened', () => {
    const came = step(noAlarms, 0, ['foam']);
    expect(newlySounded(undefined, came)).toEqual(['foam']);
    expect(newlySounded(undefined, step(came, 1, ['foam']))).toEqual([]);
  });

  it('after a mute is what is on and nobody has seen', () => {
    const came = step(noAlarms, 0, ['foam']);
    expect(stillUnseen(came.states)).toEqual(['foam']);
    expect(stillUnseen(step(came, 1, ['foam'], [{ kind: 'seen', alarm: 'foam' }]).states)).toEqual([]);
  });

  it('is advice that asks for something else than before, and not what was there when the page opened', () => {
    expect(isNewAdvice('a', 'b', 'act soon')).toBe(true);
    expect(isNewAdvice('a', 'a', 'act soon')).toBe(false);
    expect(isNewAdvice('a', 'b', 'go on')).toBe(false);
    expect(isNewAdvice(undefined, 'b', 'act now')).toBe(false);
  });
});
