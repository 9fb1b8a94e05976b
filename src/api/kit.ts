/** A kit as it comes in through the API, a form or a file, and as the store gives it back. */
import type { PanMaterial, StoveKind, ThermometerKind } from '../core/pan/kit.ts';
import { kitRanges as ranges } from '../core/pan/kit.ts';
import { exactly, numberIn, oneOf, personsName, recordId } from './field.ts';
import { z } from './zod.ts';

const stoveKinds = ['gas', 'coil', 'ceramic', 'induction'] as const satisfies StoveKind[];
const panMaterials = [
  'stainless',
  'enamel',
  'copper',
  'castIron',
  'aluminium',
  'unknownCoating',
] as const satisfies PanMaterial[];
const thermometerKinds = ['digital', 'dial'] as const satisfies ThermometerKind[];

export const kitSchema = exactly({
  name: personsName(80),
  stove: exactly({
    kind: oneOf(stoveKinds),
    ratedPowerW: numberIn(ranges.ratedPowerW),
    notches: numberIn(ranges.notches),
  }),
  pan: exactly({
    material: oneOf(panMaterials),
    diameterM: numberIn(ranges.diameterM),
    heightM: numberIn(ranges.heightM),
    massKg: numberIn(ranges.panMassKg),
  }),
  thermometer: exactly({ kind: oneOf(thermometerKinds) }),
  spoonM3: numberIn(ranges.spoonM3),
  water: exactly({ alkalinityMgPerL: numberIn(ranges.alkalinityMgPerL) }),
  altitudeM: numberIn(ranges.altitudeM),
  roomC: numberIn(ranges.roomC),
}).meta({ id: 'Kit' });

/** `version` counts the kit's changes from 1; a change must name the version that it was made from. */
export const kitRecordSchema = z
  .object({
    id: recordId(),
    version: z.int().min(1),
    created: z.iso.datetime(),
    updated: z.iso.datetime(),
    kit: kitSchema,
  })
  .meta({ id: 'KitRecord' });

export type KitRecord = z.infer<typeof kitRecordSchema>;
