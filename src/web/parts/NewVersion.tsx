/** Says that a new version waits. It is taken on a tap, and never while a cook is written here. */
import { useEffect, useState } from 'react';
import { onNewVersion, takeNewVersion } from '../serviceWorker/register.ts';

export function NewVersion({ cooking }: { readonly cooking: boolean }) {
  const [waits, setWaits] = useState(false);
  useEffect(() => onNewVersion(() => setWaits(true)), []);
  if (!waits || cooking) return null;
  return (
    <p className="new-version" role="status">
      A new version is ready.{' '}
      <button type="button" onClick={() => void takeNewVersion()}>
        Use it now
      </button>
    </p>
  );
}
