/** What must be so before the heat is turned on: ticked one by one, because each was forgotten once by somebody. */
import { handledIn } from '../../../../core/planning/handling.ts';
import type { Plan } from '../../../../core/planning/plan.ts';

export interface Check {
  readonly id: string;
  readonly text: string;
  readonly source: string;
}

const practice = 'common practice, no source';
const firstAid = 'Burns guidelines named in Care (CARE-BURN-1): water at once, so it must be at hand';

const always: readonly Check[] = [
  { id: 'CHECK-WATER', text: 'Cold running water is within reach.', source: firstAid },
  {
    id: 'CHECK-CLOTHES',
    text: 'Goggles, long sleeves, closed shoes; dry mitts at hand.',
    source: 'Safety data sheets of the alkalis named in Care; NFPA cooking safety tips',
  },
  {
    id: 'CHECK-LID',
    text: 'A lid and a damp towel lie ready, to smother a fire. Never water on it.',
    source: 'NFPA cooking safety tips',
  },
  {
    id: 'CHECK-PEOPLE',
    text: 'Children and pets are out of the kitchen, and I stay at the stove.',
    source: 'NFPA cooking safety tips',
  },
  {
    id: 'CHECK-WAY',
    text: 'The way from the stove to the tray and the sink is clear; the tray stands dry.',
    source: practice,
  },
  {
    id: 'CHECK-SPOON',
    text: 'The spoon and cold water for spoonfuls stand by the pan; the thermometer’s tip is in the syrup.',
    source: practice,
  },
];

const lye: Check = {
  id: 'CHECK-LYE',
  text: 'Goggles and nitrile gloves on, the alkali is weighed on a scale that shows 0.01 g, and mixed in stainless steel or PP, never in aluminium, nor in glass, which heat may crack: alkali into cold water and never water onto it, labelled, and out of the way of elbows.',
  source: 'Safety data sheets of the alkalis named in Care; nitrile and the scale: common practice, no source',
};

const another: Check = {
  id: 'CHECK-ANOTHER',
  text: 'Another cook is under way, and I mean to begin one more.',
  source: practice,
};

/** @param underWay another cook was begun and not ended */
export function checksFor(plan: Pick<Plan, 'request' | 'amounts' | 'steps'>, underWay: boolean): readonly Check[] {
  const hot = plan.steps.some(({ letDown }) => letDown);
  const kettle: Check = { id: 'CHECK-KETTLE', text: 'Hot water for letting down stands ready.', source: practice };
  return [...(underWay ? [another] : []), ...always, ...(handledIn(plan) ? [lye] : []), ...(hot ? [kettle] : [])];
}
