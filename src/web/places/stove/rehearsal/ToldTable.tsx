/** Hidden values beside the ranges that the twin held likely, drawn and in numbers. */

import type { Revealed } from '../../../../core/advice/reveal.ts';
import type { Range } from '../../../../core/twin/range.ts';

/** How a value is told: its name, its figure, and what stands after it. */
export interface TellingWords {
  readonly name: string;
  readonly show: (value: number) => string;
  readonly after: string;
}

interface ToldTableProps<Name extends string> {
  readonly caption: string;
  readonly told: readonly (Revealed<Name> & { readonly before?: Range })[];
  readonly wordsOf: (name: Name) => TellingWords;
}

export function ToldTable<Name extends string>({ caption, told, wordsOf }: ToldTableProps<Name>) {
  return (
    <table className="told">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">Hidden</th>
          <th scope="col">Twin, 8 in 10</th>
        </tr>
      </thead>
      <tbody>
        {told.map(({ name, hidden, believed, before, inside }) => {
          const { name: says, show, after } = wordsOf(name);
          const spanOf = ({ low, high }: Range) => `${show(low)} to ${show(high)}${after}`;
          return (
            <tr key={name}>
              <th scope="row">
                {says}
                {before && <span className="small quiet">before: {spanOf(before)}</span>}
              </th>
              <td className="hidden-value">
                {show(hidden)}
                {after}
              </td>
              <td>
                {spanOf(believed)}
                <Place hidden={hidden} believed={believed} before={before} />
                <span className="inside">{inside ? '● inside' : '○ outside'}</span>
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

interface PlaceProps {
  readonly hidden: number;
  readonly believed: Range;
  readonly before: Range | undefined;
}

/** The range before as a line, that of the twin as a box, the hidden value as a mark. */
function Place({ hidden, believed, before }: PlaceProps) {
  const values = [hidden, believed.low, believed.high, ...(before ? [before.low, before.high] : [])];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const x = (value: number) => 6 + (most > least ? (value - least) / (most - least) : 0.5) * 128;
  return (
    <svg className="place" viewBox="0 0 140 18" width="140" height="18" aria-hidden="true">
      {before && <line className="scale" x1={x(before.low)} x2={x(before.high)} y1="9" y2="9" />}
      <rect className="likely" x={x(believed.low)} y="5" width={x(believed.high) - x(believed.low) + 1} height="8" />
      <path className="mark" d={`M${x(hidden)} 1v16`} />
    </svg>
  );
}
