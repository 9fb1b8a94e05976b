/** A plan request as it comes in through the API, a form or a file. */
import type { Alkali, Form, Route } from '../core/planning/request.ts';
import {
  furtherHoldRanges as further,
  mostFurtherHolds,
  optionalRanges,
  requestRanges as ranges,
} from '../core/planning/request.ts';
import { exactly, numberIn, oneOf, personsName } from './field.ts';
import { z } from './zod.ts';

const forms = ['hard', 'syrup'] as const satisfies Form[];
const routes = ['pale', 'bright', 'deep'] as const satisfies Route[];
const alkalis = ['sodiumHydroxide', 'calciumHydroxide'] as const satisfies Alkali[];

export const planRequestSchema = exactly({
  name: personsName(80),
  massKg: numberIn(ranges.massKg),
  form: oneOf(forms),
  syrupSolids: numberIn(ranges.syrupSolids),
  route: oneOf(routes),
  alkali: oneOf(alkalis),
  alkaliGPerKg: numberIn(ranges.alkaliGPerKg),
  solutionStrength: numberIn(ranges.solutionStrength),
  alkaliActive: numberIn(optionalRanges.alkaliActive)
    .optional()
    .describe('Hydroxide in the alkali as weighed, mass fraction; 0.97 when left out.'),
  alkaliCarbonate: numberIn(optionalRanges.alkaliCarbonate)
    .optional()
    .describe('Carbonate in it, mass fraction; 0 when left out.'),
  acidGPerKg: numberIn(ranges.acidGPerKg),
  maltExtractGPerKg: numberIn(ranges.maltExtractGPerKg),
  dissolveC: numberIn(optionalRanges.dissolveC)
    .optional()
    .describe('By when all sugar is dissolved, C: the water follows from it; 80 when left out.'),
  invertC: numberIn(ranges.invertC),
  invertMinutes: numberIn(ranges.invertMinutes),
  brownC: numberIn(ranges.brownC),
  brownMinutes: numberIn(ranges.brownMinutes),
  roastC: numberIn(ranges.roastC),
  roastMinutes: numberIn(ranges.roastMinutes),
  moreHolds: z
    .array(exactly({ celsius: numberIn(further.celsius), minutes: numberIn(further.minutes) }))
    .max(mostFurtherHolds, { error: `has too many; allowed: up to ${mostFurtherHolds}` })
    .readonly()
    .optional()
    .describe('Holds after those of the route, each as hot as the one before it or hotter; none when left out.'),
}).meta({ id: 'PlanRequest' });
