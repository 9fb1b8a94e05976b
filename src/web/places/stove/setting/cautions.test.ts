import { expect, it } from 'vitest';
import { topics } from '../../care/statements.ts';
import { castOnly, whenBreaking, whileItSets } from './cautions.ts';

const all = [...whileItSets, ...castOnly, ...whenBreaking];

it('every caution has an id that no other statement has, a source, a date and a region', () => {
  const care = topics.flatMap(({ statements }) => statements.map(({ id }) => id));
  const ids = all.map(({ id }) => id);
  expect(new Set([...care, ...ids]).size).toBe(care.length + ids.length);
  for (const { id, source, date, region, head, text } of all) {
    expect(id).toMatch(/^CARE-[A-Z]+-[A-Z\d]+$/);
    expect(source).not.toBe('');
    expect(date).toMatch(/^\d{4}-\d{2}-\d{2}$/);
    expect(region).toBe('any');
    expect(head.length + text.length).toBeGreaterThan(20);
  }
});

it.each(['safe to leave', 'guaranteed', 'harmless', 'no risk', 'safe'])('no caution says “%s”', (phrase) => {
  for (const { head, text } of all) expect(`${head} ${text}`.toLowerCase()).not.toContain(phrase);
});
