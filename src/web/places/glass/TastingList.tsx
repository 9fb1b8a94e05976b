/** Tastings that are kept, the latest first. */
import type { TastingRecord } from '../../../api/tasting.ts';
import { descriptors } from '../../../core/lot/taste.ts';
import { dayText } from '../../parts/dayText.ts';

interface TastingListProps {
  readonly tastings: readonly TastingRecord[];
  readonly onRemove: (tasting: TastingRecord) => void;
}

export function TastingList({ tastings, onRemove }: TastingListProps) {
  return (
    <ul className="tasting-list">
      {tastings.map((record) => {
        const { id, tasting } = record;
        const when = dayText(tasting.tastedAt);
        return (
          <li key={id}>
            <p>
              <strong>{when}</strong>
              {tasting.weeks !== null && `, ${tasting.weeks} weeks in the bottle`}
              {tasting.liking !== null && `, liked ${tasting.liking} of 10`}
            </p>
            <p>{wordsOf(tasting.strengths)}</p>
            {tasting.note !== '' && <p className="tasting-note">{tasting.note}</p>}
            <button type="button" className="plain" onClick={() => onRemove(record)}>
              Take away<span className="unseen"> the tasting of {when}</span>
            </button>
          </li>
        );
      })}
    </ul>
  );
}

/** `dried fruit 4, toffee 2; none of burnt`, the strongest first. */
function wordsOf(strengths: TastingRecord['tasting']['strengths']): string {
  const told = descriptors.flatMap((name) => {
    const strength = strengths[name];
    return strength === null ? [] : [{ name, strength }];
  });
  const there = told.filter(({ strength }) => strength > 0).toSorted((a, b) => b.strength - a.strength);
  const absent = told.filter(({ strength }) => strength === 0).map(({ name }) => name);
  return [
    there.map(({ name, strength }) => `${name} ${strength}`).join(', '),
    absent.length > 0 ? `none of ${absent.join(', ')}` : '',
  ]
    .filter((part) => part !== '')
    .join('; ');
}
