import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { normalNumbers } from '../../reactions/normal.ts';
import { type AlarmId, type AlarmKind, alarmCatalogue, alarmIds } from './catalogue.ts';
import { type AlarmInput, type Alarms, isOn, longestAsideMinutes, noAlarms, stepAlarms } from './engine.ts';

const none = Object.fromEntries(alarmIds.map((id) => [id, false])) as Record<AlarmId, boolean | undefined>;

/** Runs second by second; `plan` says which conditions hold and what the cook does. */
function run(seconds: number, plan: (t: number) => Partial<AlarmInput>, from: Alarms = noAlarms) {
  let alarms = from;
  const sounds: { readonly t: number; readonly id: AlarmId }[] = [];
  for (let t = 0; t <= seconds; t++) {
    const stepped = stepAlarms(alarms, {
      timeS: t,
      step: 'invert',
      conditions: none,
      seen: [],
      putAside: [],
      ...plan(t),
    });
    alarms = stepped.alarms;
    for (const id of stepped.sounding) sounds.push({ t, id });
  }
  return { alarms, sounds };
}
const on = (...ids: AlarmId[]) => ({ conditions: { ...none, ...Object.fromEntries(ids.map((id) => [id, true])) } });

describe('the catalogue', () => {
  test('says of every alarm what it means, what to do and in what time, and names causes that exist', () => {
    for (const id of alarmIds) {
      const kind: AlarmKind = alarmCatalogue[id];
      for (const text of [kind.title, kind.condition, kind.consequence, kind.action])
        expect(text.length, id).toBeGreaterThan(3);
      expect(kind.respondWithinS).toBeGreaterThan(0);
      expect(kind.steps.length).toBeGreaterThan(0);
      for (const cause of kind.causedBy) expect(alarmIds).toContain(cause);
    }
  });

  test('never speaks of adding water above the scorch limit', () => {
    expect(alarmCatalogue.scorch.action.toLowerCase()).not.toContain('add water');
  });
});

describe('an alarm', () => {
  test('comes after its delay and sounds once; a condition that flickers shorter does not raise it', () => {
    expect(run(60, () => on('aboveBand')).sounds).toEqual([{ t: 30, id: 'aboveBand' }]);
    expect(run(200, (t) => (t % 20 < 15 ? on('aboveBand') : {})).sounds).toEqual([]);
  });

  test('that is noisy about its limit for ten minutes sounds at most once', () => {
    const normal = normalNumbers(4);
    expect(run(600, () => (0.5 * normal() > 0 ? on('aboveBand') : {})).sounds.length).toBeLessThanOrEqual(1);
  });

  test('to act now sounds again after 30 s and then each minute until it is seen', () => {
    const times = run(200, (t) => ({ ...on('scorch'), seen: t === 160 ? ['scorch'] : [] })).sounds.map(({ t }) => t);
    expect(times).toEqual([0, 30, 90, 150]);
  });

  test('that is over but unseen stays until it is seen', () => {
    const { alarms } = run(100, (t) => (t < 40 ? on('aboveBand') : {}));
    expect(alarms.aboveBand.phase).toBe('gone unseen');
    expect(run(1, () => ({ seen: ['aboveBand'] }), alarms).alarms.aboveBand.phase).toBe('normal');
  });

  test('is silent while its cause is on, and in steps that are not its own', () => {
    const both = run(60, () => on('probeLost', 'aboveBand'));
    expect(both.sounds).toEqual([{ t: 0, id: 'probeLost' }]);
    expect(isOn(both.alarms.aboveBand)).toBe(true);
    expect(run(60, () => ({ ...on('aboveBand'), step: 'climb' })).sounds).toEqual([]);
  });

  test('whose input vanishes stays on and is marked', () => {
    const { alarms } = run(100, (t) => (t < 40 ? on('aboveBand') : { conditions: { ...none, aboveBand: undefined } }));
    expect(alarms.aboveBand).toMatchObject({ phase: 'new', inputLost: true });
  });

  test('put aside comes back by itself, after ten minutes at most; one to act now can’t be put aside', () => {
    const aside = run(900, (t) => ({
      ...on('aboveBand'),
      putAside: t === 40 ? [{ id: 'aboveBand', minutes: 60 }] : [],
    }));
    expect(aside.sounds.map(({ t }) => t)).toEqual([30, 40 + longestAsideMinutes * 60]);
    const now = run(50, (t) => ({ ...on('scorch'), putAside: t === 10 ? [{ id: 'scorch', minutes: 5 }] : [] }));
    expect(now.alarms.scorch.phase).toBe('new');
  });
});

test('whatever happens: only alarms that are on and new sound, and what was never on is normal', () => {
  const moments = fc.array(
    fc.record({
      active: fc.subarray(alarmIds),
      lost: fc.subarray(alarmIds),
      seen: fc.subarray(alarmIds),
      aside: fc.subarray(alarmIds),
      waitS: fc.integer({ min: 1, max: 90 }),
    }),
    { maxLength: 60 },
  );
  fc.assert(
    fc.property(moments, (list) => {
      let alarms = noAlarms;
      let timeS = 0;
      const everActive = new Set<AlarmId>();
      for (const { active, lost, seen, aside, waitS } of list) {
        timeS += waitS;
        const conditions = { ...none };
        for (const id of active) conditions[id] = true;
        for (const id of lost) conditions[id] = undefined;
        for (const id of active) if (!lost.includes(id)) everActive.add(id);
        const stepped = stepAlarms(alarms, {
          timeS,
          step: 'brown',
          conditions,
          seen,
          putAside: aside.map((id) => ({ id, minutes: 5 })),
        });
        alarms = stepped.alarms;
        for (const id of stepped.sounding) {
          expect(alarms[id].phase).toBe('new');
          expect(everActive.has(id)).toBe(true);
        }
        for (const id of alarmIds) if (!everActive.has(id)) expect(alarms[id].phase).toBe('normal');
      }
    }),
  );
});
