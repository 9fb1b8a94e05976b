/** What a plan warns of whoever cooks it, each caution with an id and its source. They don't replace the data sheet of what is in your hand. */
import { hazardOf } from '../advice/hazards.ts';
import { limits } from '../advice/limits.ts';
import { anywhere, practice, type Statement } from '../advice/safety.ts';
import type { AlkaliUsed } from '../log/bodies.ts';
import { isNeutralised, neutraliseBelowC, neutralisedPh, neutralisingStrength } from './account/neutraliser.ts';
import type { Alkali, PlanRequest } from './request.ts';

/** A plan, or a cook that went by one. */
interface Handled {
  readonly request: PlanRequest;
  readonly amounts: { readonly alkali?: Pick<AlkaliUsed, 'substance' | 'strength'> | null | undefined };
}

/** What a person is told first, in a few words, and the rest. */
export interface Caution extends Statement {
  readonly head: string;
}

const alkalis = {
  sodiumHydroxide: { name: 'sodium hydroxide', words: 'food grade (E 524), never drain cleaner' },
  calciumHydroxide: { name: 'slaked lime', words: "food grade (E 526), never builder's lime" },
} as const satisfies Record<Alkali, object>;

export function alkaliFacts(substance: Alkali) {
  return alkalis[substance];
}

const dataSheets = 'safety data sheets of sodium and calcium hydroxide';
const fireTips = 'NFPA cooking safety tips (seen second-hand)';
const burnsGuide = 'ANZCOR guideline 9.1.3';

/** Heat of solution 44.5 kJ/mol in a solution of 3.8 kJ/(kg K): by how much lye warms while it is mixed, K (derived). */
function mixingHeatK(strength: number): number {
  return ((strength / 0.039997) * 44.5e3) / 3800;
}

/** What is handled: the alkali of the cook, or the little that neutralises a pale syrup afterwards. */
export function handledIn({ amounts: { alkali }, request }: Handled) {
  if (alkali || !isNeutralised(request)) return alkali;
  return { substance: request.alkali, strength: neutralisingStrength };
}

/** How an alkali is mixed with water, in the order in which it is done. */
export function mixingCautions(substance: Alkali, strength: number): readonly Caution[] {
  const lye = substance === 'sodiumHydroxide';
  return [
    {
      id: 'CAU-SHEET',
      head: 'Read the safety data sheet of your own alkali first.',
      text: 'Weigh it on a scale that shows 0.01 g.',
      source: `${dataSheets}; the scale: ${practice}`,
      ...anywhere,
    },
    {
      id: 'CAU-GLOVES',
      head: 'Goggles and nitrile gloves on, sleeves down,',
      text: 'until it is all in the pan and the vessel is rinsed.',
      source: `${dataSheets}; nitrile: ${practice}`,
      ...anywhere,
    },
    lye
      ? {
          id: 'CAU-MIX-LYE',
          head: 'Lye into cold water, never water onto lye.',
          text: `Little by little, stirring, before the heat is on: it warms by about ${Math.round(mixingHeatK(strength))} °C.`,
          source: 'laboratory sheet of a college; the warming derived from the heat of solution, 44.5 kJ/mol',
          ...anywhere,
        }
      : {
          id: 'CAU-MIX-LIME',
          head: 'Lime into cold water, never water onto lime.',
          text: 'Before the heat is on. Stir again before each part: it settles.',
          source: `safety data sheets of calcium hydroxide; that it settles: ${practice}`,
          ...anywhere,
        },
    {
      id: 'CAU-VESSEL',
      head: 'Stainless steel or PP, labelled.',
      text: 'Never aluminium: it gives off hydrogen; nor glass: heat may crack it.',
      source: `${dataSheets}; glass: ${practice}`,
      ...anywhere,
    },
  ];
}

/** The neutraliser goes into a syrup that has cooled. */
export const neutralisingCaution: Caution = {
  id: 'CAU-NEUTRALISE',
  head: `Into the syrup below ${neutraliseBelowC} °C only,`,
  text: `bit by bit, until a strip says pH ${neutralisedPh}.`,
  source: practice,
  ...anywhere,
};

/** While sugar is hot. */
export function cookingCautions(handled: Handled): readonly Caution[] {
  return [
    {
      id: 'CAU-BURN',
      head: 'Hot sugar sticks and burns deep.',
      text: 'Cold running water within reach; long sleeves, closed shoes, eye protection; dry mitts, a lid and a cold wet towel at hand.',
      source: `${burnsGuide}; ${fireTips}`,
      ...anywhere,
    },
    {
      id: 'CAU-STAY',
      head: 'Stay with the pan.',
      text: 'Umberpan computes a plan; it never watches your stove. If you leave, turn the heat off.',
      source: fireTips,
      ...anywhere,
    },
    {
      id: 'CAU-WATER',
      head: 'Water and alkali flash to steam.',
      text: `From ${limits.portionHotFrom.value} °C on never more than a teaspoon at once, down the side, face away, and wait till it is quiet.`,
      source: limits.hotSpoonful.source,
      ...anywhere,
    },
    {
      id: 'CAU-PEOPLE',
      head: 'Children and pets at least 1 m away.',
      text: 'Never touch or taste hot syrup: drops go on a cold plate.',
      source: `${fireTips}; tasting: ${practice}`,
      ...anywhere,
    },
    ...(handledIn(handled)
      ? [
          {
            id: 'CAU-LYE',
            head: 'Alkali burns and can blind.',
            text: 'Goggles and nitrile gloves; never in an aluminium pan; the safety data sheet first.',
            source: dataSheets,
            ...anywhere,
          },
        ]
      : []),
  ];
}

/** What is done at once when it has gone wrong; Care says more. */
function firstAid(handled: Handled): readonly Caution[] {
  return [
    ...(handledIn(handled)
      ? [
          {
            id: 'CAU-EYES',
            head: 'In the eye:',
            text: 'rinse at once with much water, lids open, and call for help while rinsing. On skin: take off what is wet, rinse 20 minutes; no vinegar. Swallowed: rinse the mouth, no vomiting, poison line.',
            source: `GHS statements P301+P330+P331, P305+P351+P338; ${burnsGuide}`,
            ...anywhere,
          },
        ]
      : []),
    {
      id: 'CAU-BURNED',
      head: 'Burned:',
      text: 'cool under running water for 20 minutes, then get help.',
      source: burnsGuide,
      ...anywhere,
    },
  ];
}

/** All of a plan, in the order in which they come to matter. */
export function cautionsFor(plan: Handled): readonly Caution[] {
  const alkali = handledIn(plan);
  return [
    ...(alkali ? mixingCautions(alkali.substance, alkali.strength) : []),
    ...(isNeutralised(plan.request) ? [neutralisingCaution] : []),
    ...cookingCautions(plan),
    ...firstAid(plan),
  ];
}

/** Below any list of them. */
export const replacesNothing =
  'These words don’t replace the safety data sheet of what is in your hand, nor local rules or medical help. Call your local emergency number.';

export const cautionText = ({ head, text }: Pick<Caution, 'head' | 'text'>): string => `${head} ${text}`;

/** The class of an alkali as mixed, in few words. */
export const hazardNamed = (substance: Alkali, strength: number): string => hazardOf(substance, strength).named;
