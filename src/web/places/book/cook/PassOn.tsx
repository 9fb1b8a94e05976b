/** Ways to hand a cook on: a report to read, a table, and the log itself. */
import { useState } from 'react';
import { Link } from 'wouter';
import { tableText } from '../../../../core/book/tableRows.ts';
import { fileName, saveAs } from '../../../records/saveAs.ts';
import { saveLog } from '../../../records/saveLog.ts';
import { useLots } from '../../../records/useLots.ts';
import { useKeeps } from '../../../records/useStanding.ts';
import type { LookedBack } from '../book.worker.ts';
import { ask } from '../worker.ts';
import type { Cooked } from './useCook.ts';

export function PassOn({ cooked, looked }: { readonly cooked: Cooked; readonly looked: LookedBack | undefined }) {
  const [trouble, setTrouble] = useState('');
  const lots = useLots().data ?? [];
  const keeps = useKeeps();
  const { id, name, events, state } = cooked;
  const file = fileName(name);
  const report = async () => {
    if (!looked) return;
    const made = lots
      .filter(({ lot }) => lot.cookId === id)
      .map(({ lot, notes }) => ({ lot, notes: notes.map(({ note }) => note) }));
    try {
      const html = await ask((book) => book.report(events, looked, made)).answer;
      if (html) saveAs(`${file}.html`, new Blob([html], { type: 'text/html;charset=utf-8' }));
      setTrouble('');
    } catch (error) {
      setTrouble(`The report could not be made: ${error instanceof Error ? error.message : error}`);
    }
  };
  return (
    <section className="pass-on" aria-labelledby="pass-on">
      <h2 id="pass-on">Pass on</h2>
      <p className="book-buttons">
        <button type="button" disabled={!looked} onClick={() => void report()}>
          Report
        </button>
        <button
          type="button"
          onClick={() => saveAs(`${file}.csv`, new Blob([tableText(state)], { type: 'text/csv;charset=utf-8' }))}
        >
          Table (CSV)
        </button>
        <button type="button" onClick={() => saveLog(id, name, events)}>
          Log file
        </button>
        {keeps && (
          <Link className="button" href={`/devices?share=${id}`}>
            Show a guest
          </Link>
        )}
      </p>
      <p className="small quiet">
        The report is one page that opens without a network, prints, and carries the plan, with what was measured and
        tasted of its lots. The table loses what has no column; the log file loses nothing. The Book takes in log files
        and the plans of reports.
      </p>
      <p role="alert">{trouble}</p>
    </section>
  );
}
