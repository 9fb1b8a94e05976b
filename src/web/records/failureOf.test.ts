import { expect, it } from 'vitest';
import { ProblemError } from './answer.ts';
import { failureOf } from './failureOf.ts';

const problem = {
  type: '/api/problems#invalid-input',
  title: 'Some fields are not as allowed',
  status: 400,
  instance: 'x',
};

it('says what happened without the names that programs use', () => {
  const detail = 'request.massKg is -5; allowed is a number from 0.1 to 5';
  const error = new ProblemError({ ...problem, detail });
  expect(failureOf(error, 'Not saved')).toBe('Not saved: some fields are not as allowed.');
});

it('says that a kit is gone, and what to do', () => {
  const errors = [{ field: 'kitId', message: 'kitId is "7"; there is no such kit' }];
  const error = new ProblemError({ ...problem, detail: 'kitId is "7"', errors });
  expect(failureOf(error, 'Not saved')).toMatch(/^Not saved: the kit was deleted.*Save the kit as another/);
});

it('says that this device is not let in, which is another thing than a server that is not reached', () => {
  const error = new ProblemError({ ...problem, status: 401, title: 'This device is not paired', detail: 'Ask' });
  expect(failureOf(error, 'Not saved')).toMatch(/^Not saved: this device is not let in.*Nothing is lost; pair it/);
});

it('says that nothing is lost when the server is not reached', () => {
  expect(failureOf(new TypeError('fetch failed'), 'Not deleted')).toMatch(/^Not deleted: the server is not reached/);
});
