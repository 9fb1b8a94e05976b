/** The log of a cook as a table; readings, which are many, when asked for. */
import { useState } from 'react';
import { type AlarmId, alarmCatalogue, alarmIds } from '../../../../core/advice/alarms/catalogue.ts';
import { entriesOf } from '../../../../core/book/entryText.ts';
import type { AnyEntry } from '../../../../core/log/corrections.ts';
import { clock } from '../../../parts/figures.ts';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { entryWords } from '../../stove/entryWords.ts';
import type { Cooked } from './useCook.ts';

const titleOf = (alarm: string): string =>
  alarmIds.find((id) => id === alarm) ? alarmCatalogue[alarm as AlarmId].title : alarm;

/** At the stove what was done about alarms is told beside them; here it stands in the log. */
function alarmWords(entry: AnyEntry): string | undefined {
  if (entry.kind === 'seen') return `Alarm seen: ${titleOf(entry.body.alarm)}`;
  if (entry.kind === 'putAside') return `Alarm put aside: ${titleOf(entry.body.alarm)}`;
  return undefined;
}

/** More rows than these come when they are asked for. */
const atOnce = 100;

export function LogTable({ cooked }: { readonly cooked: Cooked }) {
  const { unit } = useTemperatureUnit();
  const [readings, setReadings] = useState(false);
  const [most, setMost] = useState(atOnce);
  const { state } = cooked;
  const begun = state.begun?.body;
  if (!begun) return null;
  const entries = entriesOf(state).filter(({ kind }) => readings || kind !== 'reading');
  return (
    <section className="book-log" aria-labelledby="book-log">
      <h2 id="book-log">Log</h2>
      <label className="with-readings">
        <input type="checkbox" checked={readings} onChange={(event) => setReadings(event.target.checked)} />
        With the {state.readings.length} readings
      </label>
      <table>
        <thead>
          <tr>
            <th scope="col">When</th>
            <th scope="col">What</th>
          </tr>
        </thead>
        <tbody>
          {entries.slice(0, most).map((entry) => (
            <tr key={entry.id}>
              <th scope="row">{clock(entry.timeS / 60)}</th>
              <td>
                {alarmWords(entry) ?? entryWords(entry, begun, unit)}
                {entry.before.length > 0 && <span className="small quiet"> put right</span>}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {entries.length > most && (
        <button type="button" onClick={() => setMost(most + 5 * atOnce)}>
          Show more of {entries.length}
        </button>
      )}
    </section>
  );
}
