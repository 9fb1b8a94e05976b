/** What must be so before the heat is turned on: ticked one by one, because each was forgotten once by somebody. */
import { anywhere, practice, type Statement } from '../advice/safety.ts';
import { handledIn } from './handling.ts';
import type { Plan } from './plan.ts';

const firstAid = 'Burns guidelines named in Care (CARE-BURN-1): water at once, so it must be at hand';

const always: readonly Statement[] = [
  { id: 'CHECK-WATER', text: 'Cold running water is within reach.', source: firstAid, ...anywhere },
  {
    id: 'CHECK-CLOTHES',
    text: 'Goggles, long sleeves, closed shoes; dry mitts at hand.',
    source: 'Safety data sheets of the alkalis named in Care; NFPA cooking safety tips',
    ...anywhere,
  },
  {
    id: 'CHECK-LID',
    text: 'A lid and a damp towel lie ready, to smother a fire. Never water on it.',
    source: 'NFPA cooking safety tips',
    ...anywhere,
  },
  {
    id: 'CHECK-PEOPLE',
    text: 'Children and pets are out of the kitchen, and I stay at the stove.',
    source: 'NFPA cooking safety tips',
    ...anywhere,
  },
  {
    id: 'CHECK-WAY',
    text: 'The way from the stove to the tray and the sink is clear; the tray stands dry.',
    source: practice,
    ...anywhere,
  },
  {
    id: 'CHECK-SPOON',
    text: 'The spoon and cold water for spoonfuls stand by the pan; the thermometer’s tip is in the syrup.',
    source: practice,
    ...anywhere,
  },
];

const lye: Statement = {
  id: 'CHECK-LYE',
  text: 'Goggles and nitrile gloves on, the alkali is weighed on a scale that shows 0.01 g, and mixed in stainless steel or PP, never in aluminium, nor in glass, which heat may crack: alkali into cold water and never water onto it, labelled, and out of the way of elbows.',
  source: 'Safety data sheets of the alkalis named in Care; nitrile and the scale: common practice, no source',
  ...anywhere,
};

const another: Statement = {
  id: 'CHECK-ANOTHER',
  text: 'Another cook is under way, and I mean to begin one more.',
  source: practice,
  ...anywhere,
};

/** @param underWay another cook was begun and not ended */
export function checksFor(plan: Pick<Plan, 'request' | 'amounts' | 'steps'>, underWay: boolean): readonly Statement[] {
  const hot = plan.steps.some(({ letDown }) => letDown);
  const kettle: Statement = {
    id: 'CHECK-KETTLE',
    text: 'Hot water for letting down stands ready.',
    source: practice,
    ...anywhere,
  };
  return [...(underWay ? [another] : []), ...always, ...(handledIn(plan) ? [lye] : []), ...(hot ? [kettle] : [])];
}
