/** Two lots or more beside each other; which ones stands in the address, so that it can be kept and passed on. */
import { useState } from 'react';
import { Link, useLocation, useSearch } from 'wouter';
import type { LotRecord } from '../../../api/lot.ts';
import { SideBySide } from '../../parts/lots/SideBySide.tsx';
import { Unreached } from '../../parts/Unreached.tsx';
import { useTitle } from '../../parts/useTitle.ts';
import { reachOf } from '../../records/reach.ts';
import { useLots } from '../../records/useLots.ts';

export function SideBySidePage() {
  useTitle('Side by side · Shelf');
  const { data, error, isPending } = useLots();
  const [, go] = useLocation();
  const ids = (new URLSearchParams(useSearch()).get('lots') ?? '').split(',').filter(Boolean);
  // It stays open while more are ticked.
  const [camePicked] = useState(ids.length >= 2);
  const all = data ?? [];
  const picked = ids.flatMap((id) => all.filter((lot) => lot.id === id));
  const reach = reachOf(error);
  const become = (next: readonly string[]) =>
    go(next.length > 0 ? `/shelf/compare?lots=${next.join(',')}` : '/shelf/compare', { replace: true });
  return (
    <main id="main" className="shelf">
      <header className="shelf-head">
        <div>
          <Link href="/shelf" className="back">
            Shelf
          </Link>
          <h1>Side by side</h1>
        </div>
      </header>
      <div role="status">
        {reach !== 'reached' && (
          <p>
            <Unreached reach={reach} so="the lots can’t be seen now." />
          </p>
        )}
      </div>
      {all.length > 0 && (
        <details open={!camePicked}>
          <summary>Which lots</summary>
          <Ticks lots={all} ids={ids} onIds={become} />
        </details>
      )}
      {picked.length >= 2 ? (
        <SideBySide lots={picked} />
      ) : (
        !isPending && reach === 'reached' && <p role="status">Tick two lots or more.</p>
      )}
    </main>
  );
}

interface TicksProps {
  readonly lots: readonly LotRecord[];
  readonly ids: readonly string[];
  readonly onIds: (ids: readonly string[]) => void;
}

function Ticks({ lots, ids, onIds }: TicksProps) {
  return (
    <fieldset className="ticks">
      <legend className="unseen">Which lots</legend>
      {lots.map(({ id, lot }) => (
        <label key={id}>
          <input
            type="checkbox"
            checked={ids.includes(id)}
            onChange={({ target }) => onIds(target.checked ? [...ids, id] : ids.filter((each) => each !== id))}
          />
          {lot.name}
          {lot.origin === 'rehearsed' && <span className="quiet"> (rehearsed)</span>}
        </label>
      ))}
    </fieldset>
  );
}
