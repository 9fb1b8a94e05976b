import { expect, expectTypeOf, it } from 'vitest';
import type { Note, Photo } from '../core/lot/note.ts';
import { fieldErrors } from './fieldError.ts';
import { noteSchema } from './lotNote.ts';
import type { z } from './zod.ts';

const photo: Photo = {
  method: 'photo',
  sugarG: 1,
  totalMl: 100,
  fold: 1,
  light: 'lamp',
  paper: 'below',
  pathCm: 4,
  absorbance: { r: 0.02, g: 0.11, b: 0.33 },
  sd: { r: 0.01, g: 0.01, b: 0.012 },
  a430Path: 0.47,
  within: 0.14,
  taught: true,
};
const noted = (reading: object) => ({ kind: 'measured', at: '2030-03-03T10:00:00.000Z', reading });

it('notes of the schema and of the core are the same (checked by the compiler)', () => {
  expectTypeOf<z.infer<typeof noteSchema>>().toExtend<Note>();
  expectTypeOf<Note>().toExtend<z.input<typeof noteSchema>>();
});

it('a picture’s reading is kept as told', () => {
  expect(noteSchema.parse(noted(photo))).toEqual(noted(photo));
});

it('a comparison from before screens could be taught is one on an untaught screen, and may say so', () => {
  const eye = { method: 'comparison', sugarG: 1, totalMl: 100, fold: 1, a430PerCm: 0.2, step: 1.35, depthCm: 3 };
  for (const each of [eye, { ...eye, taught: true }]) expect(noteSchema.parse(noted(each))).toEqual(noted(each));
  expect(noteSchema.safeParse(noted({ ...eye, taught: 'yes' })).success).toBe(false);
});

it.each([
  ['light', { light: 'candle' }, 'daylight, lamp'],
  ['absorbance.b', { absorbance: { r: 0, g: 0, b: 9 } }, '-0.05 to 3'],
  ['within', { within: 0 }, '0.001 to 2'],
  ['a430Path', { a430Path: undefined }, '0.001 to 20'],
])('a picture’s %s that can’t be is refused by name', (field, wrong, allowed) => {
  const parsed = noteSchema.safeParse(noted({ ...photo, ...wrong }));
  const refused = parsed.success ? [] : fieldErrors(parsed.error);
  expect(refused.map((each) => each.field)).toEqual([`reading.${field}`]);
  expect(refused[0]?.message).toContain(allowed);
});
