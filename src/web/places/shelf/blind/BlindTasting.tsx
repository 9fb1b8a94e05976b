/** Tasting several lots without knowing which is which: somebody else sets them out by their codes, the taster sees the codes alone. */
import { useState } from 'react';
import { Link } from 'wouter';
import { type Blind, blindOrder } from '../../../../core/lot/blind.ts';
import { useTitle } from '../../../parts/useTitle.ts';
import { useLots } from '../../../records/useLots.ts';
import { type Shown, shownOf } from '../shown.ts';
import { SetOut } from './SetOut.tsx';
import { TasteByCode } from './TasteByCode.tsx';

type Stage = 'choose' | 'set out' | 'taste';

export function BlindTasting() {
  const { data } = useLots();
  const [leftOut, setLeftOut] = useState<readonly string[]>([]);
  const [order, setOrder] = useState<readonly Blind[]>([]);
  const [stage, setStage] = useState<Stage>('choose');
  useTitle('Blind tasting · Shelf');
  const lots = (data ?? []).map(shownOf).filter(({ lot, known }) => lot.origin !== 'rehearsed' && !known.stock.usedUp);
  const taken = lots.filter(({ id }) => !leftOut.includes(id));

  function begin() {
    const [seed = 0] = crypto.getRandomValues(new Int32Array(1));
    setOrder(
      blindOrder(
        taken.map(({ id }) => id),
        seed,
      ),
    );
    setStage('set out');
  }

  return (
    <main id="main" className="shelf blind">
      <header className="shelf-head">
        <div>
          <Link href="/shelf" className="back">
            Shelf
          </Link>
          <h1>Blind tasting</h1>
        </div>
      </header>
      {stage === 'choose' && (
        <>
          <Chooser lots={lots} leftOut={leftOut} onLeftOut={setLeftOut} />
          <button type="button" className="main" disabled={taken.length < 2} onClick={begin}>
            Give them codes
          </button>
        </>
      )}
      {stage === 'set out' && <SetOut order={order} lots={taken} onDone={() => setStage('taste')} />}
      {stage === 'taste' && <TasteByCode order={order} lots={taken} />}
    </main>
  );
}

interface ChooserProps {
  readonly lots: readonly Shown[];
  readonly leftOut: readonly string[];
  readonly onLeftOut: (ids: readonly string[]) => void;
}

function Chooser({ lots, leftOut, onLeftOut }: ChooserProps) {
  return (
    <fieldset className="ticks">
      <legend>Which are tasted (two or more)</legend>
      {lots.map(({ id, lot }) => (
        <label key={id}>
          <input
            type="checkbox"
            checked={!leftOut.includes(id)}
            onChange={({ target }) =>
              onLeftOut(target.checked ? leftOut.filter((each) => each !== id) : [...leftOut, id])
            }
          />
          {lot.name}
        </label>
      ))}
    </fieldset>
  );
}
