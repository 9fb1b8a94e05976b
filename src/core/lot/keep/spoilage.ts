/** What can grow in a syrup, by its water activity: a caution, and no date to use it by. */
import { requireRange } from '../../matter/range.ts';

export interface Growth {
  /** Water activity from which this can grow, up to the next. */
  readonly from: number;
  readonly says: string;
  readonly advice: string;
}

/** Source: Beuchat 1981, Cereal Foods World 26:345 (seen as a table of it); toxin of Staphylococcus not below about 0.85 (from memory). */
const growths: readonly Growth[] = [
  {
    from: 0.87,
    says: 'most yeasts, and bacteria',
    advice: 'not to be kept: use it the same day, or chill it and use it within days',
  },
  { from: 0.8, says: 'most moulds, and staphylococci', advice: 'keep it in the fridge, and use it within weeks' },
  {
    from: 0.65,
    says: 'moulds and yeasts that stand sugar',
    advice: 'fill it hot and close it; once open, keep it in the fridge',
  },
  {
    from: 0.6,
    says: 'a few yeasts, very slowly',
    advice: 'keep it closed; water that condenses on top is where it begins',
  },
  { from: 0, says: 'nothing that is known', advice: 'keep it closed, so that it stays so' },
];

/** @param activity water activity, 0 to 1 */
export function growthAt(activity: number): Growth {
  requireRange('water activity', activity, 0, 1);
  return growths.find(({ from }) => activity >= from) as Growth;
}
