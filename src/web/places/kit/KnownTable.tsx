/** Every number of the kitchen: what was typed or is usual, what was measured, what was learned, with its range drawn. */
import type { Change, KitchenNumber } from '../../../core/learn/changes.ts';
import { type KnownNumber, knownNumbers } from '../../../core/learn/knownNumbers.ts';
import { figureOf, numberWords } from '../../../core/learn/words.ts';
import type { Kit } from '../../../core/pan/kit.ts';
import type { Range } from '../../../core/twin/range.ts';
import { span } from '../../parts/figures.ts';
import { WideTable } from '../../parts/WideTable.tsx';
import { RangeBar } from './RangeBar.tsx';

export function KnownTable({ kit }: { readonly kit: Kit }) {
  return (
    <WideTable label="What is known of it, as a table">
      <table className="known">
        <caption>
          What is known of it
          <span className="quiet">10-90 % ranges: of any such kit, and of yours</span>
        </caption>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">Any such kit</th>
            <th scope="col">Yours</th>
            <th scope="col" className="wide-only">
              Drawn
            </th>
          </tr>
        </thead>
        <tbody>
          {knownNumbers(kit).map((known) => (
            <Row key={known.name} known={known} />
          ))}
        </tbody>
      </table>
    </WideTable>
  );
}

function Row({ known }: { readonly known: KnownNumber }) {
  const { name, stated, now, measured } = known;
  const isLearned = known.narrowing < 0.98;
  return (
    <tr>
      <th scope="row">
        {numberWords[name].name}
        {measured && (
          <span className="small quiet">
            measured {rangeText(name, measured.range)} ({measured.by})
          </span>
        )}
      </th>
      <td>{rangeText(name, stated)}</td>
      <td>
        {isLearned ? <strong>{rangeText(name, now)}</strong> : <span className="quiet as-any">as any</span>}
        <span className="narrow-only">
          <RangeBar before={stated} after={now} />
        </span>
      </td>
      <td className="wide-only">
        <RangeBar before={stated} after={now} />
      </td>
    </tr>
  );
}

function rangeText(name: KitchenNumber, range: Range): string {
  const words = numberWords[name];
  const text = span(range, (value) => figureOf(words, value).replace('-', '−'));
  return words.unit ? `${text} ${words.unit}` : text;
}

interface ChangesProps {
  readonly changes: readonly Change[];
  readonly caption: string;
  readonly note: string;
}

/** What one lesson changes, before it is kept. */
export function ChangesTable({ changes, caption, note }: ChangesProps) {
  return (
    <WideTable label="What changed, as a table">
      <table className="known">
        <caption>
          {caption}
          <span className="quiet">{note}</span>
        </caption>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">Before</th>
            <th scope="col">After</th>
            <th scope="col">Narrower by</th>
          </tr>
        </thead>
        <tbody>
          {changes.map(({ name, before, after, narrowing }) => (
            <tr key={name}>
              <th scope="row">{numberWords[name].name}</th>
              <td>{rangeText(name, before)}</td>
              <td>
                <strong>{rangeText(name, after)}</strong>
                <RangeBar before={before} after={after} />
              </td>
              <td>{Math.round(100 * (1 - narrowing))} %</td>
            </tr>
          ))}
        </tbody>
      </table>
    </WideTable>
  );
}
