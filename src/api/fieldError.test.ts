import { describe, expect, it } from 'vitest';
import { begunBody, sampleBodies, sampleCook } from '../../test/sampleCook.ts';
import { defaultRequest } from '../core/planning/request.ts';
import { eventBatchSchema, eventSchema } from './event.ts';
import { countInText } from './field.ts';
import { fieldErrors } from './fieldError.ts';
import { planRequestSchema } from './planRequest.ts';
import { z } from './zod.ts';

function messages(schema: z.ZodType, value: unknown): string[] {
  const { error } = schema.safeParse(value);
  return error ? fieldErrors(error).map(({ message }) => message) : [];
}

describe('a number in text', () => {
  const query = z.object({ limit: countInText([1, 500]).default(100) });

  it.each([
    ['abc', '"abc"'],
    ['NaN', '"NaN"'],
    ['', '""'],
    ['1.5', '"1.5"'],
    ['0x10', '"0x10"'],
    ['0', '0'],
    ['501', '501'],
    [['1', '2'], '["1","2"]'],
  ])('%j is refused as it was sent', (limit, shown) => {
    expect(messages(query, { limit })).toEqual([`limit is ${shown}; allowed: a whole number from 1 to 500`]);
  });

  it('is taken up to its limits', () => {
    expect(['1', '500', undefined].map((limit) => query.parse({ limit }).limit)).toEqual([1, 500, 100]);
  });
});

const { reading, begun } = sampleCook();
const withStep = (change: object) => {
  const [first, ...others] = begunBody.steps;
  return { ...begun, body: { ...begunBody, steps: [{ ...first, ...change }, ...others] } };
};

it.each([
  [
    'one of a choice',
    withStep({ end: { reachedC: 999 } }),
    'body.steps.0.end.reachedC is 999; allowed: a number from -50 to 250',
  ],
  ['a choice of two', withStep({ end: {} }), 'body.steps.0.end is {}; allowed: {"reachedC": -50 to 250} or'],
  [
    'another choice',
    { ...reading, body: { ...sampleBodies.reading, raw: true } },
    'body.raw is true; allowed: a number, up to',
  ],
  ['a fixed value', { ...reading, v: 2 }, 'v is 2; allowed: 1'],
  ['a kind', { ...reading, kind: 'smell' }, 'kind is "smell"; allowed: begun, reading'],
  ['no event at all', null, 'the input is null; allowed: an object'],
  ['no number', { ...reading, tMono: Number.NaN }, 'tMono is NaN; allowed: a number from'],
  ['half a number', { ...reading, deviceSeq: 1.5 }, 'deviceSeq is 1.5; allowed: a whole number from'],
  ['an unknown key', { ...reading, mood: 'calm' }, 'mood is not known; known here: id'],
  ['a time', { ...reading, tDevice: 'soon' }, 'tDevice is "soon"; allowed: a time that exists'],
  [
    'a rule of two fields',
    { ...reading, body: { ...sampleBodies.reading, quality: 'lost' } },
    'body.quality is "lost"; allowed',
  ],
])('%s: field, value and what is allowed', (_, event, words) => {
  expect(messages(eventSchema, event)).toEqual([expect.stringContaining(words)]);
});

it('a batch says how many it may hold', () => {
  expect(messages(eventBatchSchema, [])).toEqual(['the input is []; allowed: 1 to 500 events']);
});

it('a schema without words of its own gets ours', () => {
  const plain = z.strictObject({
    a: z.string().min(3),
    b: z.number().max(2),
    c: z.literal('x'),
    d: z.union([z.string(), z.number()]),
    e: z.array(z.int()),
    f: z.boolean(),
  });
  const wrong = { a: '', b: 3, c: 'y', d: true, e: [0.5], f: 'yes', g: 1 };
  expect(messages(plain, wrong)).toEqual([
    'a is ""; allowed: 3 or more characters',
    'b is 3; allowed: 2 or less',
    'c is "y"; allowed: x',
    'd is true, which is not allowed',
    'e.0 is 0.5; allowed: a whole number',
    'f is "yes"; allowed: true or false',
    'g is not known here',
  ]);
});

it('no message of a plan request is the validator’s own', () => {
  for (const field of Object.keys(defaultRequest)) {
    for (const value of [Number.NaN, null, [], {}, true, 'x'.repeat(500), undefined]) {
      for (const message of messages(planRequestSchema, { ...defaultRequest, [field]: value })) {
        expect(message).toMatch(/^\w+ is .+; allowed: /);
        expect(message).not.toMatch(/Invalid|expected|received|Unrecognized/);
      }
    }
  }
});
