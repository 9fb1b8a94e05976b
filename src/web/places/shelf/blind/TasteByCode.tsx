/** The taster's part: one code after the other; the names come when all are done. */
import { useState } from 'react';
import { Link } from 'wouter';
import type { NewNote } from '../../../../api/lotNote.ts';
import type { Blind } from '../../../../core/lot/blind.ts';
import { failureOf } from '../../../records/failureOf.ts';
import { newId } from '../../../records/newId.ts';
import { useKeepNote } from '../../../records/useLots.ts';
import type { Shown } from '../shown.ts';
import { TasteForm } from '../taste/TasteForm.tsx';

interface TasteProps {
  readonly order: readonly Blind[];
  readonly lots: readonly Shown[];
}

export function TasteByCode({ order, lots }: TasteProps) {
  const keeping = useKeepNote();
  const [at, setAt] = useState(0);
  const current = order[at];
  if (!current) return <Revealed order={order} lots={lots} />;
  const keep = (note: NewNote) =>
    keeping.mutate({ lotId: current.id, id: newId(), note }, { onSuccess: () => setAt(at + 1) });
  return (
    <section aria-labelledby="taste-code">
      <h2 id="taste-code">
        Cup {current.code}{' '}
        <span className="small quiet">
          {at + 1} of {order.length}
        </span>
      </h2>
      <p className="small">Water and a bite of plain bread in between.</p>
      <p role="status">{keeping.error ? failureOf(keeping.error, 'Not kept') : ''}</p>
      <TasteForm key={current.code} name={`cup ${current.code}`} blind busy={keeping.isPending} onKeep={keep} />
    </section>
  );
}

function Revealed({ order, lots }: TasteProps) {
  return (
    <section aria-labelledby="revealed">
      <h2 id="revealed">What they were</h2>
      <ul className="note-list">
        {order.map(({ id, code }) => (
          <li key={code}>
            <span>
              <strong className="figure">{code}</strong>{' '}
              <Link href={`/shelf/${id}`}>{lots.find((lot) => lot.id === id)?.lot.name}</Link>
            </span>
          </li>
        ))}
      </ul>
      <p>
        <Link className="button" href={`/shelf/compare?lots=${order.map(({ id }) => id).join(',')}`}>
          Lay them side by side
        </Link>
      </p>
    </section>
  );
}
