/** Forgetting on request: of one thing that is another one now, or of everything. Shown once more before it is done. */
import { useState } from 'react';
import type { KitRecord } from '../../../api/kit.ts';
import { forgetting, type Thing } from '../../../core/learn/forget.ts';
import { type KitHand, useKeeping } from './useKitInHand.ts';

const things = {
  stove: 'the stove',
  pan: 'the pan',
  thermometer: 'the thermometer',
  spoon: 'the spoon',
  sugar: 'sugar and browning',
} as const satisfies Record<Thing, string>;

export function Forgetting({ hand, record }: { readonly hand: KitHand; readonly record: KitRecord }) {
  const [wished, setWished] = useState<Thing | 'all'>();
  const { state, message, keep } = useKeeping(hand);
  const said = wished === 'all' ? 'everything' : wished && things[wished];
  const forget = () => {
    if (!wished) return;
    keep(forgetting(record.kit, wished === 'all' ? undefined : [wished]), `Forgotten: ${said}.`, () =>
      setWished(undefined),
    );
  };
  return (
    <details className="forgetting">
      <summary>Forget</summary>
      <p className="small quiet">
        A new stove, pan or spoon forgets by itself when you change it above. A single cook can’t be taken out of what
        several have taught: forget everything and learn from the others again.
      </p>
      <div className="buttons">
        {[...(Object.keys(things) as Thing[]), 'all' as const].map((thing) => (
          <button key={thing} type="button" aria-pressed={wished === thing} onClick={() => setWished(thing)}>
            {thing === 'all' ? 'Everything' : `Of ${things[thing]}`}
          </button>
        ))}
      </div>
      {wished && (
        <div className="kit-note" role="alert">
          <p>
            What was learned of <strong>{said}</strong> is gone for good then. What was typed stays.
          </p>
          <div className="buttons">
            <button type="button" className="main" onClick={forget} disabled={state === 'busy'}>
              Forget {said}
            </button>
            <button type="button" onClick={() => setWished(undefined)}>
              Keep it
            </button>
          </div>
        </div>
      )}
      <p role="status" className="small">
        {message}
      </p>
    </details>
  );
}
