import { describe, expect, it } from 'vitest';
import { defaultKit } from '../../pan/kit.ts';
import { centralValues } from '../../pan/model.ts';
import { prepareKit } from '../../pan/preparedKit.ts';
import { accountOf } from '../../planning/account.ts';
import { describe as drawn, drawOf, summarise } from '../../planning/forecast.ts';
import { cautionsFor } from '../../planning/handling.ts';
import { planFor } from '../../planning/plan.ts';
import { defaultRequest, type PlanRequest } from '../../planning/request.ts';
import { escaped } from './markup.ts';
import { sheetHtml } from './sheetHtml.ts';

function sheetOf(change: Partial<PlanRequest>, kit = defaultKit) {
  const prepared = prepareKit(kit);
  const planned = planFor({ ...defaultRequest, ...change }, prepared);
  if (planned.kind === 'refused') throw new Error('refused');
  const { plan, course } = planned;
  const draws = [0, 1, 2, 3].map((number) => drawOf(plan, prepared, 1, number));
  const forecast = summarise(plan, drawn(course, centralValues(kit), 1), draws);
  const account = accountOf(plan, course, prepared);
  return { plan, html: sheetHtml({ plan, course, kit, forecast, account, made: 'Umberpan' }) };
}

describe('a kitchen sheet', () => {
  it('has a box to tick for each step, and every caution of the plan', () => {
    const { plan, html } = sheetOf({ route: 'deep', form: 'syrup' });
    expect(html.match(/class="box"/g)).toHaveLength(plan.steps.length);
    for (const { head, text } of cautionsFor(plan)) {
      expect(html).toContain(escaped(head));
      expect(html).toContain(escaped(text));
    }
    expect(html).toMatch(/HAZ-LYE-1A/);
  });

  it('tells the alkali that neutralises a pale syrup, and none for hard sugar', () => {
    expect(sheetOf({ route: 'pale', form: 'syrup' }).html).toContain('to neutralise the cooled syrup');
    expect(sheetOf({ route: 'pale', form: 'hard' }).html).not.toMatch(/hydroxide, food grade|CAU-EYES/);
  });

  it('draws without colour: the only paints are black, white and grey', () => {
    const { html } = sheetOf({});
    expect(html).toContain('<pattern id=');
    for (const [, paint = ''] of html.matchAll(/#([\da-f]{3,6})\b/g)) expect(paint).toMatch(/^(0|a|f)\1{2}$/);
    expect(html).not.toMatch(/rgb|hsl|oklch/);
  });

  it('asks nothing of a network or a script, and makes names harmless', () => {
    const bad = '<img src=x onerror=alert(1)>"&';
    const { html } = sheetOf({ name: bad }, { ...defaultKit, name: bad });
    expect(html).not.toContain('<img');
    expect(html).not.toMatch(/<script|<link|https?:|src="|@import/);
    expect(html.split(escaped(bad))).toHaveLength(4);
  });
});
