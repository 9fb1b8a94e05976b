import { expect, test } from 'vitest';
import { answersFor, mappingOf } from './answers.ts';

test('columns and the way times are written are guessed; the unit never is', () => {
  const answers = answersFor('Seconds,Probe 1,Note\n0,21,heat 4\n', 5e12);
  expect(answers).toMatchObject({ time: 'Seconds', temperature: 'Probe 1', deed: 'Note', timeForm: 's', unit: '' });
  expect(mappingOf(answers)).toBeUndefined();
  expect(mappingOf({ ...answers, unit: '[degF]' })).toMatchObject({ unit: '[degF]', deed: 'Note' });
});

test('a table with instants says itself when it began', () => {
  const answers = answersFor('{"time":"2031-05-09T18:30:05Z","temp":21}\n', 5e12);
  expect(answers.timeForm).toBe('instant');
  expect(new Date(answers.beganMs).toISOString()).toBe('2031-05-09T18:30:05.000Z');
});
