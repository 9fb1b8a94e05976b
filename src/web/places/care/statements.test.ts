import { expect, it } from 'vitest';
import { emergencyNumbers, topics } from './statements.ts';

const statements = topics.flatMap((topic) => topic.statements);
const all = [...statements, ...emergencyNumbers];

it('every statement has an id of its own, a source, a date and a region', () => {
  expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
  for (const { id, source, date, region } of all) {
    expect(id).toMatch(/^CARE-[A-Z]+-[A-Z\d]+$/);
    expect(source).not.toBe('');
    expect(date).toMatch(/^\d{4}-\d{2}-\d{2}$/);
    expect(region).toMatch(/^(any|[A-Z]{2})$/);
  }
});

it.each(['safe to leave', 'guaranteed', 'harmless', 'no risk'])('no statement says “%s”', (phrase) => {
  for (const { text } of statements) expect(text.toLowerCase()).not.toContain(phrase);
});

it('what must be done first stands first', () => {
  const first = Object.fromEntries(topics.map(({ id, statements: [head] }) => [id, head?.text]));
  expect(first['burn']).toMatch(/running water for 20 minutes/);
  expect(first['eyes']).toMatch(/^Flush at once/);
  expect(first['swallowed']).toMatch(/Don’t bring on vomiting/);
  expect(first['fire']).toMatch(/^Lid on, heat off.*Never water/);
});
