import { describe, expect, test } from 'vitest';
import { checkKit } from '../../../core/learn/checks/check.ts';
import { defaultKit, type Kit } from '../../../core/pan/kit.ts';
import { kitToKeep } from './kitToKeep.ts';

const spoonfulsKg = [0.0046, 0.0051, 0.0044, 0.0049, 0.0042, 0.005];
const { learned } = checkKit(defaultKit, { kind: 'spoons', spoonfulsKg }, '2031-05-09T18:30:00.000Z');
const saved: Kit = { ...defaultKit, learned };

describe('a form that is saved', () => {
  test('leaves what was measured and learned alone, also what was learned while it was filled in', () => {
    expect(kitToKeep({ ...saved, name: 'Church hall', roomC: 19 }, saved)).toEqual({
      ...saved,
      name: 'Church hall',
      roomC: 19,
    });
    expect(kitToKeep({ ...defaultKit, roomC: 19 }, saved).learned).toEqual(learned);
  });

  test('forgets of a thing that is another one now, with the check of it', () => {
    const { learned: left } = kitToKeep({ ...saved, spoonM3: 1e-5 }, saved);
    expect(left?.names).not.toContain('spoonFactor');
    expect(left?.lessons).toEqual([]);
  });

  test('takes a new kit as it is', () => {
    expect(kitToKeep(defaultKit, undefined)).toEqual(defaultKit);
  });
});
