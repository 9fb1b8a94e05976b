import { expect, it } from 'vitest';
import { begunBody, sampleCook, sampleDevice, sha256 } from '../../../../../test/sampleCook.ts';
import { reportHtml } from '../../../../core/book/report/reportHtml.ts';
import { writeCookFile } from '../../../../core/log/cookFile.ts';
import { foldCook } from '../../../../core/log/fold.ts';
import { defaultKit } from '../../../../core/pan/kit.ts';
import { defaultRequest } from '../../../../core/planning/request.ts';
import { passedOn } from './passedOn.ts';

const plan = { format: 'umberpan-plan-1', request: { ...defaultRequest, name: 'Hall' }, kit: defaultKit, steps: [] };

it('a log, a report and a plan are told apart by what is in them', () => {
  const { cook, events } = sampleCook();
  expect(passedOn(writeCookFile(cook, events, sha256))).toEqual({ kind: 'cook' });
  const state = foldCook([sampleDevice('a').make('begun', begunBody, 0)]);
  const report = reportHtml({ state, beliefs: [], landed: undefined, lots: [] }) ?? '';
  expect(passedOn(report)).toEqual({ kind: 'plan', request: defaultRequest });
  for (const text of [JSON.stringify(plan), JSON.stringify(plan, null, 2)]) {
    expect(passedOn(text)).toEqual({ kind: 'plan', request: plan.request });
  }
});

it.each([
  ['a table', 'time_s,kind\n0,heat\n'],
  ['an empty file', ''],
  ['a page without a plan', '<!doctype html><p>umberpan-plan-1</p>'],
  ['a report that was cut off', '<!doctype html><script type="application/json" id="umberpan-plan">{"format":'],
  ['other JSON', '[1]'],
  ['null', 'null'],
])('%s is refused, and it is said what is allowed', (_, text) => {
  expect(passedOn(text)).toEqual({ kind: 'refused', why: expect.stringMatching(/allowed: the log file of a cook/) });
});

it('a plan that no kitchen allows is refused with the field and what is allowed', () => {
  const wrong = { ...plan, request: { ...plan.request, massKg: 900, colour: 1 } };
  const why = expect.stringMatching(/massKg is 900; allowed: .*colour is not known/);
  expect(passedOn(JSON.stringify(wrong))).toEqual({ kind: 'refused', why });
});

it('the file of a whole workspace is sent where it is taken in', () => {
  const text = '{"format":"umberpan-workspace","formatVersion":1,"rows":[\n],"count":0,"sha256":""}\n';
  expect(passedOn(text)).toEqual({ kind: 'refused', why: expect.stringMatching(/Put everything in/) });
});
