/** What was done and said, newest first. In a real cook each can be put right afterwards. */
import { useState } from 'react';
import type { AnyEntry } from '../../../core/log/corrections.ts';
import { clock } from '../../parts/figures.ts';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { useActs } from './acts.ts';
import type { Cook } from './deedWords.ts';
import { entryWords } from './entryWords.ts';
import { PutRight } from './PutRight.tsx';

interface LogBookProps {
  readonly entries: readonly AnyEntry[];
  readonly cook: Cook;
}

const usuallyShown = 10;

export function LogBook({ entries, cook }: LogBookProps) {
  const { unit } = useTemperatureUnit();
  const acts = useActs();
  const [openId, setOpenId] = useState<string>();
  const [all, setAll] = useState(false);
  const shown = all ? entries : entries.slice(-usuallyShown);
  return (
    <section className="log-book" aria-labelledby="log-book">
      <h2 id="log-book">Log</h2>
      {entries.length === 0 && <p className="quiet">Nothing is noted yet.</p>}
      <ol reversed start={entries.length}>
        {shown.toReversed().map((entry) => (
          <li key={entry.id}>
            <span className="log-time">{clock(entry.timeS / 60)}</span>
            <span>
              {entryWords(entry, cook, unit)}
              {entry.before.length > 0 && <span className="small quiet"> put right</span>}
            </span>
            {acts.correct && (
              <button
                type="button"
                className="small"
                aria-expanded={openId === entry.id}
                onClick={() => setOpenId(openId === entry.id ? undefined : entry.id)}
              >
                Put right
              </button>
            )}
            {openId === entry.id && acts.correct && (
              <PutRight
                entry={entry}
                cook={cook}
                onDone={(body) => {
                  if (body !== undefined) acts.correct?.(entry, body);
                  setOpenId(undefined);
                }}
              />
            )}
          </li>
        ))}
      </ol>
      {entries.length > usuallyShown && (
        <button type="button" onClick={() => setAll(!all)}>
          {all ? 'Show the last ones' : `Show all ${entries.length}`}
        </button>
      )}
      {acts.saveLog && (
        <>
          <button type="button" onClick={acts.saveLog}>
            Save the log as a file
          </button>
          <p className="small quiet">
            From this device, with or without the server. The Book takes such files in, here or at another address.
          </p>
        </>
      )}
    </section>
  );
}
