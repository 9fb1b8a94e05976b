/** What neutralises the acid of a pale syrup once it is cool, so that it keeps its colour and stops inverting. */

import { requireRange } from '../../matter/range.ts';
import { MOLAR_MASS } from '../../matter/sugars.ts';
import type { Kit } from '../../pan/kit.ts';
import type { Amounts } from '../amounts.ts';
import type { Alkali, PlanRequest } from '../request.ts';
import { waterEquivalents } from './waterCheck.ts';

/** Citric acid, kg/mol, and its pK at 25 C (Goldberg, Kishore & Lennen 2002, J. Phys. Chem. Ref. Data 31:231; from memory). */
const citricMolarMassKg = 0.192124;
const citricPk = [3.128, 4.761, 6.396] as const;
/** Hardly sour any more, and far from where sugar browns (assumed). */
export const neutralisedPh = 5.5;
/** The syrup must have cooled below this: lye hurts less, and browns nothing (assumed). */
export const neutraliseBelowC = 60;

/** The alkali goes in as so weak a solution, mass fraction, that little of it overshoots (assumed). */
export const neutralisingStrength = 0.05;

/** Charges on a molecule of citric acid at a pH, 0 to 3. */
export function citricCharges(ph: number): number {
  const [first, second, third] = citricPk;
  const once = 10 ** (ph - first);
  const twice = once * 10 ** (ph - second);
  const thrice = twice * 10 ** (ph - third);
  return (once + 2 * twice + 3 * thrice) / (1 + once + twice + thrice);
}

/** A pale syrup is neutralised; hard sugar, cast at once, keeps its acid. */
export function isNeutralised({ route, form }: Pick<PlanRequest, 'route' | 'form'>): boolean {
  return route === 'pale' && form === 'syrup';
}

export interface Neutraliser {
  /** Pure sodium or calcium hydroxide, kg. */
  readonly naohKg: number;
  readonly caoh2Kg: number;
  readonly equivalents: number;
}

/**
 * @param waterEquivalents base that the water's alkalinity has brought already
 * @param ph wanted of the cooled syrup, 4 to 7
 * What acid the cook itself made is not counted (some per cent of it): go by a strip on a 1:10 dilution for the last tenth.
 */
export function neutraliserFor(citricAcidKg: number, waterEquivalents: number, ph = neutralisedPh): Neutraliser {
  requireRange('pH of the neutralised syrup', ph, 4, 7);
  const equivalents = Math.max(0, (citricAcidKg / citricMolarMassKg) * citricCharges(ph) - waterEquivalents);
  return {
    equivalents,
    naohKg: equivalents * MOLAR_MASS.naoh,
    caoh2Kg: (equivalents * MOLAR_MASS.caoh2) / 2,
  };
}

/** That of a plan, cooked with the kit's water; nothing where none is needed. */
export function neutraliserOf(
  { request, amounts: { charge } }: { readonly request: PlanRequest; readonly amounts: Amounts },
  { water }: Pick<Kit, 'water'>,
): Neutraliser | undefined {
  if (!isNeutralised(request)) return undefined;
  return neutraliserFor(charge.citricAcidKg, waterEquivalents(water, charge.waterKg));
}

/** What is weighed of an alkali to neutralise with: the pure substance, and the water that makes it as weak as it goes in, kg. */
export function neutralisingAmounts(
  substance: Alkali,
  { naohKg, caoh2Kg }: Neutraliser,
): { readonly pureKg: number; readonly waterKg: number } {
  const pureKg = substance === 'sodiumHydroxide' ? naohKg : caoh2Kg;
  return { pureKg, waterKg: pureKg / neutralisingStrength - pureKg };
}
