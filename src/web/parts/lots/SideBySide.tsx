/** Lots beside each other: their measurements in one table, and how they tasted in another, word by word. */
import { useId, useState } from 'react';
import type { LotRecord } from '../../../api/lot.ts';
import { knownOf } from '../../../core/lot/known.ts';
import {
  type Cell,
  measuredBeside,
  type NotedLot,
  type SideBySideRow,
  tastedBeside,
} from '../../../core/lot/sideBySide.ts';
import { type Profiled, strengthRange } from '../../../core/lot/taste.ts';
import { Drop } from '../Drop.tsx';
import { likelyHueIndex, type Tone } from '../syrupPaint.ts';
import { WideTable } from '../WideTable.tsx';
import './sideBySide.css';

/** In the order in which they are to stand. */
export function SideBySide({ lots }: { readonly lots: readonly LotRecord[] }) {
  const noted = lots.map(({ lot, notes }): NotedLot => ({ lot, notes: notes.map(({ note }) => note) }));
  const heads = lots.map(({ id, lot }, at) => ({ id, name: lot.name, tone: toneOf(noted[at]) }));
  return (
    <>
      <MeasuredTable heads={heads} rows={measuredBeside(noted)} />
      <TastedTable heads={heads} lots={noted} />
    </>
  );
}

type Heads = readonly { readonly id: string; readonly name: string; readonly tone: Tone }[];

function toneOf({ lot, notes }: NotedLot): Tone {
  const { a430, waterShare } = knownOf(lot, notes).figures;
  return { a430: a430.mid, hueIndex: likelyHueIndex(a430.mid), waterShare: waterShare.mid };
}

function Head({ heads, first }: { readonly heads: Heads; readonly first: string }) {
  return (
    <thead>
      <tr>
        <th scope="col">{first}</th>
        {heads.map(({ id, name, tone }) => (
          <th key={id} scope="col">
            <Drop tone={tone} size={28} /> {name}
          </th>
        ))}
      </tr>
    </thead>
  );
}

function MeasuredTable({ heads, rows }: { readonly heads: Heads; readonly rows: readonly SideBySideRow[] }) {
  return (
    <WideTable label="Measurements side by side">
      <table className="side-by-side">
        <caption>
          Measured{' '}
          <span className="quiet">
            with the range that holds 8 in 10; what nobody measured is what was believed at the pour
          </span>
        </caption>
        <Head heads={heads} first="What" />
        <tbody>
          {rows.map(({ what, unit, digits, cells }) => (
            <tr key={what}>
              <th scope="row">
                {what}
                {unit && <span className="quiet">, {unit}</span>}
              </th>
              {cells.map((cell, at) => (
                <td key={heads[at]?.id}>{cell ? <Figure cell={cell} digits={digits} /> : 'not measured'}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </WideTable>
  );
}

function Figure({ cell: { range, readings, contradicts }, digits }: { readonly cell: Cell; readonly digits: number }) {
  const shown = (value: number) => value.toFixed(digits);
  const times = readings === 1 ? 'measured once' : `measured ${readings} times`;
  return (
    <>
      <strong>{shown(range.mid)}</strong>{' '}
      <span className="small quiet from">
        {shown(range.low)} to {shown(range.high)}
      </span>
      <span className="small from">{readings === 0 ? 'believed' : times}</span>
      {contradicts && <span className="small from">the readings contradict each other</span>}
    </>
  );
}

function TastedTable({ heads, lots }: { readonly heads: Heads; readonly lots: readonly NotedLot[] }) {
  const box = useId();
  const [blindOnly, setBlindOnly] = useState(false);
  const { words, textures, tastings } = tastedBeside(lots, blindOnly);
  const anyBlind = tastedBeside(lots, true).tastings.some((count) => count > 0);
  if (words.length === 0 && !blindOnly) return <p className="quiet">None of them was tasted yet.</p>;
  return (
    <>
      {anyBlind && (
        <p className="beside-tick">
          <input id={box} type="checkbox" checked={blindOnly} onChange={({ target }) => setBlindOnly(target.checked)} />
          <label htmlFor={box}>Only tastings by who did not know which was which</label>
        </p>
      )}
      <WideTable label="Tastes side by side">
        <table className="side-by-side tastes">
          <caption>
            Taste{' '}
            <span className="quiet">
              mean strength, 0 none to 5 very strong; the line: least to most of several tastings
            </span>
          </caption>
          <Head heads={heads} first="Word" />
          <tbody>
            {words.map(({ name, cells }) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                {cells.map((cell, at) => (
                  <td key={heads[at]?.id}>
                    {cell ? <Strength word={cell} /> : <span className="quiet">not asked</span>}
                  </td>
                ))}
              </tr>
            ))}
            <tr>
              <th scope="row">Texture</th>
              {textures.map((texture, at) => (
                <td key={heads[at]?.id}>{texture ?? <span className="quiet">not said</span>}</td>
              ))}
            </tr>
            <tr>
              <th scope="row">Tastings</th>
              {tastings.map((count, at) => (
                <td key={heads[at]?.id}>{count}</td>
              ))}
            </tr>
          </tbody>
        </table>
      </WideTable>
    </>
  );
}

const most = strengthRange[1];
const across = (strength: number): number => (100 * strength) / most;

/** The number first: the bar beside it only makes rows quick to compare. */
function Strength({ word: { mean, least, most: highest } }: { readonly word: Profiled }) {
  return (
    <span className="strength">
      <strong>{Number.isInteger(mean) ? mean : mean.toFixed(1)}</strong>
      <svg viewBox="0 0 100 12" preserveAspectRatio="none" aria-hidden="true">
        <path className="grid" d={Array.from({ length: most + 1 }, (_, at) => `M${across(at)} 0v12`).join('')} />
        <rect y="3" width={across(mean)} height="6" />
        {highest > least && <path className="spread" d={`M${across(least)} 6H${across(highest)}`} />}
      </svg>
    </span>
  );
}
