/** What is weighed to neutralise a pale syrup: pure alkali, and the water that makes it as weak as it goes in, kg. */
import { type Neutraliser, neutralisingStrength } from '../../../core/planning/account/neutraliser.ts';
import type { Alkali } from '../../../core/planning/request.ts';

export function neutralisingAmounts(substance: Alkali, { naohKg, caoh2Kg }: Neutraliser) {
  const pureKg = substance === 'sodiumHydroxide' ? naohKg : caoh2Kg;
  return { pureKg, waterKg: pureKg / neutralisingStrength - pureKg };
}
