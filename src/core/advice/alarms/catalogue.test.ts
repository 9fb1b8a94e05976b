import { describe, expect, test } from 'vitest';
import { type AlarmKind, alarmCatalogue, alarmIds } from './catalogue.ts';

const kinds: readonly (readonly [string, AlarmKind])[] = Object.entries(alarmCatalogue);

describe('the catalogue', () => {
  test.each(kinds)('says all of %s: what, why, what for, what to do and how soon', (_, kind) => {
    for (const text of [kind.title, kind.condition, kind.cause, kind.consequence, kind.action]) {
      expect(text.trim().length).toBeGreaterThan(3);
    }
    expect(kind.respondWithinS).toBeGreaterThan(0);
    expect(kind.onDelayS).toBeLessThan(kind.respondWithinS);
    expect(kind.steps.length).toBeGreaterThan(0);
    expect(kind.causedBy.filter((cause) => !(cause in alarmCatalogue))).toEqual([]);
  });

  test('lets those to act now, and only those, sound again, with the most urgent pattern', () => {
    for (const [id, { priority, soundsAgainS, sound }] of kinds) {
      expect(soundsAgainS !== null, id).toBe(priority === 'act now');
      expect(sound, id).toBe({ 'act now': 'threeAndTwo', 'act soon': 'three', 'keep in mind': 'one' }[priority]);
    }
  });

  test('never silences an alarm to act now, and has no circle of causes', () => {
    const rootedIn = (id: string, path: readonly string[]): void => {
      expect(path).not.toContain(id);
      for (const cause of alarmCatalogue[id as keyof typeof alarmCatalogue].causedBy) rootedIn(cause, [...path, id]);
    };
    for (const id of alarmIds) rootedIn(id, []);
    for (const [id, { priority, causedBy }] of kinds) if (priority === 'act now') expect(causedBy, id).toEqual([]);
  });

  test('speaks of adding water nowhere: some of it is read in syrup above the roast limit', () => {
    for (const [id, { action }] of kinds) expect(action, id).not.toMatch(/(add|spoonful|pour).*water/i);
  });
});
