/** Cooks beside each other in numbers. */
import { useState } from 'react';
import { type DifferenceRow, differencesOf } from '../../../../core/book/differences.ts';
import { WideTable } from '../../../parts/WideTable.tsx';
import type { Overlaid } from './overlaid.ts';

export function Differences({ cooks }: { readonly cooks: readonly Overlaid[] }) {
  const [all, setAll] = useState(false);
  const rows = differencesOf(cooks.map(({ summary }) => summary.facts));
  const shown = all ? rows : rows.filter(differs);
  return (
    <section aria-labelledby="differences">
      <h2 id="differences">Differences</h2>
      <label className="with-readings">
        <input type="checkbox" checked={all} onChange={(event) => setAll(event.target.checked)} />
        Also what is alike
      </label>
      <WideTable label="Differences, as a table">
        <table className="differences">
          <thead>
            <tr>
              <th scope="col">What</th>
              {cooks.map(({ id, name }, i) => (
                <th key={id} scope="col">
                  {i + 1}. {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {shown.map((row) => (
              <tr key={row.what}>
                <th scope="row">
                  {row.what}
                  {row.unit && <span className="quiet">, {row.unit}</span>}
                </th>
                {row.values.map((value, i) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: the column is the cook
                  <td key={i}>{value === null ? '–' : value.toFixed(row.digits)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </WideTable>
    </section>
  );
}

function differs({ values, digits }: DifferenceRow): boolean {
  return new Set(values.map((value) => value?.toFixed(digits))).size > 1;
}
