/** What a table says, before any of it is taken; or each cell that says nothing. */
import type { Preview } from '../../../../core/learn/imported/preview.ts';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { degrees } from '../../../parts/temperature.ts';

/** More are counted, not listed. */
const mostListed = 20;

export function PreviewView({ preview }: { readonly preview: Preview }) {
  const { unit } = useTemperatureUnit();
  const { rows, readings, happenings, lowestC, highestC, lastS, wrong } = preview;
  if (wrong.length > 0) {
    return (
      <section className="kit-note" role="alert">
        <h2>Nothing is taken from this table</h2>
        <ul className="wrong-cells">
          {wrong.slice(0, mostListed).map(({ line, column, value, reason }) => (
            <li key={`${line}/${column}/${reason}`}>
              Line {line}
              {column !== null && `, ${column}`}: {value && `“${value.slice(0, 40)}” `}
              {reason}
            </li>
          ))}
        </ul>
        {wrong.length > mostListed && <p>and {wrong.length - mostListed} more.</p>}
      </section>
    );
  }
  const deeds = happenings.flatMap(({ deed }) => (deed ? [deed.kind] : []));
  const kinds = [...new Set(deeds)].map((kind) => `${deeds.filter((one) => one === kind).length} ${kind}`);
  return (
    <section className="outcome" aria-labelledby="preview" aria-live="polite">
      <h2 id="preview">What it says</h2>
      <dl className="found">
        <div>
          <dt>Rows</dt>
          <dd>{rows}</dd>
        </div>
        <div>
          <dt>Readings</dt>
          <dd>
            {readings}
            {lowestC !== null && highestC !== null && `, ${degrees(lowestC, unit)} to ${degrees(highestC, unit)}`}
          </dd>
        </div>
        <div>
          <dt>Deeds</dt>
          <dd>{kinds.length > 0 ? kinds.join(', ') : 'none: without settings of the dial nothing can be learned'}</dd>
        </div>
        <div>
          <dt>Lasts</dt>
          <dd>{(lastS / 60).toFixed(0)} min</dd>
        </div>
      </dl>
      {highestC !== null && (highestC < 90 || highestC > 190) && (
        <p className="kit-note">
          The hottest reading is {degrees(highestC, unit)}: no such sugar was cooked at that. Is the unit right?
        </p>
      )}
    </section>
  );
}
