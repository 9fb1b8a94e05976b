/** The same beer in another size: everything that has a size is scaled, so that nothing in the glass changes. */
import { useState } from 'react';
import { type Glass, glassRanges } from '../../../core/beer/glass.ts';
import { scaledTo } from '../../../core/beer/swap.ts';
import { type Sheet, troubles, typed } from '../../parts/entry.ts';
import { SheetField } from '../../parts/SheetField.tsx';
import { litresEntry } from './quantities.ts';
import { volumeShown } from './shown.ts';
import type { GlassHand } from './useGlass.ts';

interface SizeProps {
  readonly hand: GlassHand;
  readonly glass: Glass;
  /** As it is, sugars in it. */
  readonly volumeL: number;
}

export function Size({ hand, glass, volumeL }: SizeProps) {
  const [sheet, setSheet] = useState<Sheet<number>>({ good: volumeL, texts: {} });
  const entries = {
    volume: litresEntry(
      {
        label: 'Beer wanted',
        hint: `sugars in it; it is ${volumeShown(hand.units)(volumeL)} now`,
        range: glassRanges.volumeL,
        get: (litres: number) => litres,
        set: (_, litres) => litres,
      },
      hand.units,
    ),
  };
  const written = sheet.texts['volume'];
  const can = written !== undefined && Object.keys(troubles(sheet, entries)).length === 0;

  function scale() {
    const scaled = scaledTo(glass, sheet.good);
    const { good } = hand.draft.sheet;
    hand.replace({
      ...good,
      rest: scaled.rest,
      kettleLossL: scaled.kettleLossL,
      doses: good.doses.map((dose, at) => ({ ...dose, massKg: scaled.doses[at]?.massKg ?? dose.massKg })),
    });
  }

  return (
    <section className="ask" aria-labelledby="glass-size">
      <h2 id="glass-size">Another size</h2>
      <form
        aria-label="Another size"
        onSubmit={(event) => {
          event.preventDefault();
          if (can) scale();
        }}
      >
        <SheetField
          sheet={written === undefined ? { good: volumeL, texts: {} } : sheet}
          entries={entries}
          field="volume"
          onText={(field, text) => setSheet(typed(sheet, entries, field, text))}
        />
        <button type="submit" disabled={!can}>
          Make it this size
        </button>
      </form>
    </section>
  );
}
