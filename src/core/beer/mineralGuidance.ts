/** What is said about sodium and calcium in water and beer, each with its source. Matters of taste: none of these is a limit of health. */
import { anywhere, type Sourced } from '../advice/safety.ts';

export type Metal = 'sodium' | 'calcium';

interface Guideline extends Sourced {
  readonly metal: Metal;
  /** From this on, mg/L. */
  readonly fromMgPerL: number;
  /** Of what the sugars add, or of all that is in the beer. */
  readonly of: 'added' | 'total';
  readonly level: 'note' | 'warning' | 'strong warning';
  readonly meaning: string;
}

/** The highest that applies of a metal and a basis is the one to tell. */
export const mineralGuidance: readonly Guideline[] = [
  {
    id: 'GLA-SODIUM-ADDED',
    metal: 'sodium',
    fromMgPerL: 60,
    of: 'added',
    level: 'note',
    meaning: 'some taste it from here on in drinking water; in beer 75 to 150 mg/L in all rounds and sweetens',
    source: 'US EPA taste advisory 30-60 mg/L (EPA 822-R-03-006, seen quoted); Palmer & Kaminski 2013 (from memory)',
    ...anywhere,
  },
  {
    id: 'GLA-SODIUM-MUCH',
    metal: 'sodium',
    fromMgPerL: 120,
    of: 'total',
    level: 'warning',
    meaning: 'more than brewers advise',
    source: 'below 100 to 120 mg/L advised: Palmer & Kaminski 2013; Taylor in Handbook of Brewing (from memory)',
    ...anywhere,
  },
  {
    id: 'GLA-SODIUM-HARSH',
    metal: 'sodium',
    fromMgPerL: 200,
    of: 'total',
    level: 'strong warning',
    meaning:
      'as much as the guideline for the taste of drinking water; beer tastes salty or sour, above 250 mg/L harsh',
    source: 'WHO Guidelines for Drinking-water Quality: 200 mg/L, for taste and not health (seen quoted)',
    ...anywhere,
  },
  {
    id: 'GLA-CALCIUM-ADDED',
    metal: 'calcium',
    fromMgPerL: 100,
    of: 'added',
    level: 'note',
    meaning: 'within what can be tasted in water, 100 to 300 mg/L; some of it drops out with oxalate and phosphate',
    source: 'WHO Guidelines for Drinking-water Quality, on hardness (seen quoted)',
    ...anywhere,
  },
  {
    id: 'GLA-CALCIUM-MUCH',
    metal: 'calcium',
    fromMgPerL: 150,
    of: 'total',
    level: 'warning',
    meaning: 'more than brewing water mostly holds, 50 to 150 mg/L',
    source: 'brewing texts (from memory)',
    ...anywhere,
  },
];

/** The strongest guideline of a metal that is reached, none when it is little. */
export function mineralGuideline(metal: Metal, addedMgPerL: number, totalMgPerL: number): Guideline | undefined {
  return mineralGuidance.findLast(
    (each) => each.metal === metal && (each.of === 'added' ? addedMgPerL : totalMgPerL) >= each.fromMgPerL,
  );
}
