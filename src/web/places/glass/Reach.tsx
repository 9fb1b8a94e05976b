/** The reverse: to a colour, a share or a gravity, how much of which lot; and when none does it, the sugar to plan. */
import { useMemo, useState } from 'react';
import type { Glass, WhenAdded } from '../../../core/beer/glass.ts';
import { sugarOf } from '../../../core/beer/keptGlass.ts';
import { type BeerWish, type Reach as Reached, reach } from '../../../core/beer/reach.ts';
import { Choice } from '../../parts/Choice.tsx';
import { type Sheet, troubles, typed } from '../../parts/entry.ts';
import { SheetField } from '../../parts/SheetField.tsx';
import { times } from './DoseForm.tsx';
import { ReachAnswer } from './ReachAnswer.tsx';
import { type Choosable, choosable, glassLot, type ShelfLot } from './sugars.ts';
import type { GlassHand } from './useGlass.ts';
import { emptyWish, type Wish, wishEntries } from './wishEntries.ts';

interface ReachProps {
  readonly hand: GlassHand;
  readonly glass: Glass;
}

interface Asked {
  readonly wish: BeerWish;
  readonly mostShare: number;
  readonly besides: boolean;
  readonly added: WhenAdded;
  readonly candidates: readonly Choosable[];
}

export function Reach({ hand, glass }: ReachProps) {
  const [sheet, setSheet] = useState<Sheet<Wish>>({ good: emptyWish, texts: {} });
  const [besides, setBesides] = useState<'without' | 'besides'>('without');
  const [added, setAdded] = useState<WhenAdded>('kettle');
  const [leftOut, setLeftOut] = useState<readonly string[]>(['table']);
  const [asked, setAsked] = useState<Asked>();
  const { lots } = hand;
  const entries = wishEntries(hand.units);
  const { ebc, share, gravity, mostShare } = sheet.good;
  const all = choosable(hand.draft.sheet.good, lots);
  const wrong = Object.keys(troubles(sheet, entries)).length > 0;
  const both = share !== null && gravity !== null;
  const none = ebc === null && share === null && gravity === null;
  const answer = useMemo(() => asked && answerTo(asked, glass, lots), [asked, glass, lots]);
  const field = { sheet, entries, onText: (name: string, text: string) => setSheet(typed(sheet, entries, name, text)) };

  function ask() {
    const wish = { ebc: ebc ?? undefined, extractShare: share ?? undefined, gravity: gravity ?? undefined };
    const candidates = all.filter(({ id }) => !leftOut.includes(id));
    setAsked({ wish, mostShare, besides: besides === 'besides', added, candidates });
  }

  return (
    <section className="ask" aria-labelledby="glass-reach">
      <h2 id="glass-reach">How much of which sugar</h2>
      <form
        aria-label="What to reach"
        onSubmit={(event) => {
          event.preventDefault();
          if (!(wrong || both || none)) ask();
        }}
      >
        <div className="glass-thirds">
          <SheetField {...field} field="ebc" />
          <SheetField {...field} field="share" />
          <SheetField {...field} field="gravity" />
        </div>
        <div className="glass-pairs">
          <Choice
            label="From the beer"
            value={besides}
            options={[
              ['without', 'without sugars'],
              ['besides', 'as it is'],
            ]}
            onChoose={setBesides}
          />
          <Choice label="Added" value={added} options={times} onChoose={setAdded} />
        </div>
        <details>
          <summary>Which sugars may be taken, and how much</summary>
          <SheetField {...field} field="mostShare" />
          {all.map(({ id, name }) => (
            <label key={id} className="tick">
              <input
                type="checkbox"
                checked={!leftOut.includes(id)}
                onChange={({ target }) =>
                  setLeftOut(target.checked ? leftOut.filter((each) => each !== id) : [...leftOut, id])
                }
              />
              {name}
            </label>
          ))}
        </details>
        <p className="small quiet">
          {both ? 'A share or a gravity: leave one of them empty.' : 'Fill in one, or a colour with one of the others.'}
        </p>
        <button type="submit" className="main" disabled={wrong || both || none}>
          Find
        </button>
      </form>
      <div role="status">{asked && answer && <ReachAnswer answer={answer} asked={asked} hand={hand} />}</div>
    </section>
  );
}

export type { Asked };
export type Answer = Reached | { readonly kind: 'refused'; readonly why: string };

function answerTo(
  { wish, mostShare, besides, added, candidates }: Asked,
  glass: Glass,
  lots: readonly ShelfLot[],
): Answer {
  const lotOf = (id: string) => glassLot(lots, id);
  const known = candidates.flatMap(({ sugar }) => {
    const found = sugarOf(sugar, lotOf);
    return found ? [{ sugar: found, added }] : [];
  });
  try {
    return reach(besides ? glass : { ...glass, doses: [] }, known, wish, mostShare);
  } catch (error) {
    if (error instanceof RangeError) return { kind: 'refused', why: error.message };
    throw error;
  }
}
