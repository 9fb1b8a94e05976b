/** Ways to hand a cook on: a report to read, a table, and the log itself. */
import { useState } from 'react';
import { Link } from 'wouter';
import { tableText } from '../../../../core/book/tableRows.ts';
import { useLots } from '../../../records/useLots.ts';
import { useKeeps } from '../../../records/useStanding.ts';
import type { LookedBack } from '../book.worker.ts';
import { ask } from '../worker.ts';
import { saveAs } from './saveAs.ts';
import type { Cooked } from './useCook.ts';

export function PassOn({ cooked, looked }: { readonly cooked: Cooked; readonly looked: LookedBack | undefined }) {
  const [trouble, setTrouble] = useState('');
  const lots = useLots().data ?? [];
  const keeps = useKeeps();
  const { id, name, events, state } = cooked;
  const file = name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || 'cook';
  const report = async () => {
    if (!looked) return;
    const made = lots
      .filter(({ lot }) => lot.cookId === id)
      .map(({ lot, notes }) => ({ lot, notes: notes.map(({ note }) => note) }));
    try {
      const html = await ask((book) => book.report(events, looked, made)).answer;
      if (html) saveAs(`${file}.html`, 'text/html', html);
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
        <button type="button" onClick={() => saveAs(`${file}.csv`, 'text/csv', tableText(state))}>
          Table (CSV)
        </button>
        <a className="button" href={`/api/cooks/${id}/file`} download>
          Log file
        </a>
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
