/** A rehearsal that is over is gone with the page, unless it is kept. */
import { useState } from 'react';
import { Link } from 'wouter';
import { keepInBook } from './session.ts';

type Kept = { readonly id: string } | { readonly trouble: string } | 'keeping' | undefined;

export function KeepInBook() {
  const [kept, setKept] = useState<Kept>();
  const keep = () => {
    setKept('keeping');
    keepInBook().then(
      (id) => setKept({ id }),
      (error: unknown) => setKept({ trouble: error instanceof Error ? error.message : String(error) }),
    );
  };
  if (kept !== undefined && kept !== 'keeping' && 'id' in kept) {
    return (
      <Link className="button" href={`/book/${kept.id}`}>
        Kept: see it in the Book
      </Link>
    );
  }
  return (
    <>
      <button type="button" disabled={kept === 'keeping'} onClick={keep}>
        Keep in the Book
      </button>
      {kept !== undefined && kept !== 'keeping' && <span role="alert">It could not be kept: {kept.trouble}</span>}
    </>
  );
}
