/** One sugar for another in the same beer, at equal colour or at equal extract. */
import { useMemo, useState } from 'react';
import type { Dosed } from '../../../core/beer/dose.ts';
import type { Glass } from '../../../core/beer/glass.ts';
import { sugarOf } from '../../../core/beer/keptGlass.ts';
import { type Equal, swapped } from '../../../core/beer/swap.ts';
import { Choice } from '../../parts/Choice.tsx';
import { massShown } from './shown.ts';
import { choosable, glassLot, nameOfSugar } from './sugars.ts';
import type { GlassHand } from './useGlass.ts';

const equals = [
  ['colour', 'colour of the beer'],
  ['extract', 'original gravity'],
] as const;

type Found = Dosed | { readonly kind: 'refused'; readonly why: string };

export function Swap({ hand, glass }: { readonly hand: GlassHand; readonly glass: Glass }) {
  const { lots, units, draft, setDoses } = hand;
  const { doses } = draft.sheet.good;
  const [place, setPlace] = useState('0');
  const [wanted, setWanted] = useState<string>();
  const [equal, setEqual] = useState<Equal>('colour');
  const at = Math.min(Number(place), doses.length - 1);
  const before = doses[at];
  const others = choosable(draft.sheet.good, lots).filter(({ sugar }) => sugar !== before?.sugar);
  const other = others.find(({ id }) => id === wanted) ?? others[0];
  const sugar = other?.sugar;
  const found = useMemo(
    () =>
      sugar &&
      swapFor(
        glass,
        at,
        sugarOf(sugar, (id) => glassLot(lots, id)),
        equal,
      ),
    [glass, at, sugar, equal, lots],
  );
  if (!before || !other) return null;
  const mass = massShown(units);

  return (
    <section className="ask" aria-labelledby="glass-swap">
      <h2 id="glass-swap">Another sugar instead</h2>
      <div className="glass-pairs">
        {doses.length > 1 && (
          <Choice
            wide
            label="Instead of"
            value={String(at)}
            options={doses.map((dose, i) => [String(i), `${mass(dose.massKg)} of ${nameOfSugar(dose.sugar, lots)}`])}
            onChoose={setPlace}
          />
        )}
        <Choice
          wide
          label="This one"
          value={other.id}
          options={others.map(({ id, name }) => [id, name])}
          onChoose={setWanted}
        />
        <Choice wide label="At equal" value={equal} options={equals} onChoose={setEqual} />
      </div>
      <div role="status">
        {found?.kind === 'dosed' && (
          <p>
            <strong>{mass(found.massKg.mid)}</strong> of {other.name}{' '}
            <span className="quiet">
              (8 in 10: {mass(found.massKg.low)} to {mass(found.massKg.high)})
            </span>{' '}
            for {mass(before.massKg)} of {nameOfSugar(before.sugar, lots)}.
          </p>
        )}
        {found && found.kind !== 'dosed' && (
          <p>
            {other.name} can't take its place at equal {equal}: {whyNot(found)}.
          </p>
        )}
      </div>
      {found?.kind === 'dosed' && (
        <button
          type="button"
          onClick={() =>
            setDoses(
              doses.map((dose, i) => (i === at ? { ...dose, sugar: other.sugar, massKg: found.massKg.mid } : dose)),
            )
          }
        >
          Put it in instead
        </button>
      )}
    </section>
  );
}

function swapFor(glass: Glass, at: number, sugar: ReturnType<typeof sugarOf>, equal: Equal): Found | undefined {
  if (!sugar || !glass.doses[at]) return undefined;
  try {
    return swapped(glass, at, sugar, equal);
  } catch (error) {
    if (error instanceof RangeError) return { kind: 'refused', why: error.message };
    throw error;
  }
}

function whyNot(found: Exclude<Found, { readonly kind: 'dosed' }>): string {
  if (found.kind === 'refused') return found.why;
  return found.kind === 'already' ? 'the beer has more without it' : 'no amount of it is enough';
}
