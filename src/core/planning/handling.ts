/** What a plan warns of, each caution with an id and its source. They don't replace the data sheet of what is in your hand. */
import { limits, lyeClass } from '../advice/limits.ts';
import type { AlkaliUsed } from '../log/bodies.ts';
import { isNeutralised, neutralisingStrength } from './account/neutraliser.ts';
import type { PlanRequest } from './request.ts';

/** A plan, or a cook that went by one. */
interface Handled {
  readonly request: PlanRequest;
  readonly amounts: { readonly alkali?: Pick<AlkaliUsed, 'substance' | 'strength'> | null | undefined };
}

export interface Caution {
  readonly id: string;
  readonly text: string;
  readonly source: string;
}

const alkalis = {
  sodiumHydroxide: {
    name: 'sodium hydroxide',
    words: 'food grade (E 524), never drain cleaner',
    hazard: (strength: number) => lyeClass(strength),
    source: 'EU classification of sodium hydroxide: H314 1A from 5 %, 1B from 2 %, H315 and H319 from 0.5 %',
  },
  calciumHydroxide: {
    name: 'slaked lime',
    words: "food grade (E 526), never builder's lime",
    hazard: () => 'eye damage, skin irritant',
    source: 'suppliers’ safety data sheets of calcium hydroxide: H315, H318, H335',
  },
} as const;

export function alkaliFacts(substance: keyof typeof alkalis) {
  return alkalis[substance];
}

/** Heat of solution 44.5 kJ/mol in a solution of 3.8 kJ/(kg K): by how much lye warms while it is mixed, K (derived). */
function mixingHeatK(strength: number): number {
  return ((strength / 0.039997) * 44.5e3) / 3800;
}

/** What is handled: the alkali of the cook, or the little that neutralises a pale syrup afterwards. */
export function handledIn({ amounts: { alkali }, request }: Handled) {
  if (alkali || !isNeutralised(request)) return alkali;
  return { substance: request.alkali, strength: neutralisingStrength };
}

export function cautionsFor(plan: Handled): readonly Caution[] {
  const alkali = handledIn(plan);
  const burn: Caution[] = [
    {
      id: 'CAU-BURN',
      text: 'Hot sugar sticks and burns deep. Long sleeves, closed shoes, dry mitts, goggles; children and pets out of the kitchen; cold water running within reach. A burn: cool under running water for 20 minutes, then get help.',
      source: 'ANZCOR guideline 9.1.3',
    },
    {
      id: 'CAU-WATER',
      text: `Water flashes to steam from ${limits.portionHotFrom.value} °C on: never more than a teaspoon of water at once, face away, and wait until it is quiet.`,
      source: limits.hotSpoonful.source,
    },
    { id: 'CAU-STAY', text: 'Stay at the stove. If you leave, turn the heat off.', source: 'NFPA cooking safety tips' },
  ];
  if (!alkali) return burn;
  const { source } = alkaliFacts(alkali.substance);
  const warm =
    alkali.substance === 'sodiumHydroxide'
      ? ` It warms by about ${Math.round(mixingHeatK(alkali.strength))} °C.`
      : ' Stir it up again before each part.';
  return [
    {
      id: 'CAU-MIX',
      text: `Before the heat is on: goggles and gloves, then the alkali into cold water, little by little, stirring; never water onto alkali.${warm} Steel or PP vessel, labelled; never aluminium.`,
      source,
    },
    {
      id: 'CAU-EYES',
      text: 'In the eye: rinse at once with much water, lids open, and call for help while rinsing. On skin: take off what is wet, rinse 20 minutes; no vinegar. Swallowed: rinse the mouth, no vomiting, poison line.',
      source: 'CLP statements P301+P330+P331, P305+P351+P338; ANZCOR guideline 9.1.3',
    },
    ...burn,
  ];
}
