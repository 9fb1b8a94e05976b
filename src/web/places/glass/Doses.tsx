/** The sugars in the glass. */
import { mostDoses } from '../../../core/beer/keptGlass.ts';
import { Unreached } from '../../parts/Unreached.tsx';
import { DoseForm } from './DoseForm.tsx';
import { sugarOfShelf } from './sugars.ts';
import type { GlassHand } from './useGlass.ts';

export function Doses({ hand }: { readonly hand: GlassHand }) {
  const { draft, lots, reach, addSugar } = hand;
  const { doses } = draft.sheet.good;
  const [newest] = lots;
  const full = doses.length >= mostDoses;
  return (
    <form className="glass-sheet doses" aria-label="Its sugars" onSubmit={(event) => event.preventDefault()}>
      <h2>Its sugars</h2>
      {doses.length === 0 && <p className="quiet">None yet.</p>}
      {doses.map((dose, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a sugar is known by its place alone
        <DoseForm key={at} hand={hand} dose={dose} at={at} />
      ))}
      <div className="glass-buttons">
        <button type="button" disabled={full || !newest} onClick={() => newest && addSugar(sugarOfShelf(newest.id))}>
          Add a lot
        </button>
        <button type="button" disabled={full} onClick={() => addSugar()}>
          Add a bought sugar
        </button>
      </div>
      {!newest && (
        <p className="small quiet">
          {reach === 'reached' ? (
            'No lot on the shelf yet: a cook at the Stove makes one.'
          ) : (
            <Unreached reach={reach} so="no lots." />
          )}
        </p>
      )}
    </form>
  );
}
