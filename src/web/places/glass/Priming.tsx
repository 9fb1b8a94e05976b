/** Priming: how much of a sugar carbonates the beer in its bottles, what pressure that makes, and what is refused. */
import { useMemo, useState } from 'react';
import { gramsPerLitreOfVolume } from '../../../core/beer/carbonDioxide.ts';
import { formulas } from '../../../core/beer/formulas.ts';
import { sugarOf } from '../../../core/beer/keptGlass.ts';
import { type Priming as Primed, primingFor, usualPriming } from '../../../core/beer/priming.ts';
import { primingCautions } from '../../../core/beer/primingCautions.ts';
import { type VesselKind, vessels } from '../../../core/beer/vessels.ts';
import { Choice } from '../../parts/Choice.tsx';
import { type Sheet, troubles, typed } from '../../parts/entry.ts';
import { WrongMark } from '../../parts/Field.tsx';
import { SheetField } from '../../parts/SheetField.tsx';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { CautionList } from './CautionList.tsx';
import { PrimingTable } from './PrimingTable.tsx';
import { type PrimingForm, primingEntries } from './primingEntries.ts';
import { volumeShown } from './shown.ts';
import { choosable, glassLot } from './sugars.ts';
import type { GlassHand } from './useGlass.ts';

const start: PrimingForm = {
  volumeL: null,
  beerC: 20,
  wishGPerL: 2.5 * gramsPerLitreOfVolume,
  ...usualPriming,
};
const kinds = [
  ['ordinary', 'ordinary bottles'],
  ['heavy', 'heavy bottles'],
  ['keg', 'keg or cask'],
] as const satisfies (readonly [VesselKind, string])[];

type Outcome = Primed | { readonly kind: 'no'; readonly why: string };

export function Priming({ hand, volumeL }: { readonly hand: GlassHand; readonly volumeL: number }) {
  const { unit } = useTemperatureUnit();
  const [sheet, setSheet] = useState<Sheet<PrimingForm>>({ good: start, texts: {} });
  const [wanted, setWanted] = useState('table');
  const entries = primingEntries(hand.units, unit);
  const sugars = choosable(hand.draft.sheet.good, hand.lots);
  const chosen = sugars.find(({ id }) => id === wanted) ?? sugars.at(-1);
  const { good } = sheet;
  const wrong = Object.keys(troubles(sheet, entries)).length > 0;
  const kept = chosen?.sugar;
  const outcome = useMemo((): Outcome | undefined => {
    const sugar = kept && sugarOf(kept, (id) => glassLot(hand.lots, id));
    if (!sugar) return undefined;
    try {
      return primingFor({ ...good, volumeL: good.volumeL ?? volumeL }, sugar);
    } catch (error) {
      if (error instanceof RangeError) return { kind: 'no', why: error.message };
      throw error;
    }
  }, [good, volumeL, kept, hand.lots]);
  const field = { sheet, entries, onText: (name: string, text: string) => setSheet(typed(sheet, entries, name, text)) };
  const refusals = outcome?.kind === 'refused' ? { wishGPerL: outcome.message } : {};

  return (
    <section className="ask priming" aria-labelledby="glass-priming">
      <h2 id="glass-priming">Priming</h2>
      <form aria-label="Priming" className="glass-pairs" onSubmit={(event) => event.preventDefault()}>
        <SheetField {...field} field="volumeL" hint={`empty: all ${volumeShown(hand.units)(volumeL)}`} />
        <SheetField {...field} field="beerC" />
        <SheetField {...field} field="wishGPerL" refusals={refusals} />
        <Choice
          label="Into"
          value={good.vessel}
          options={kinds}
          hint={`up to ${vessels[good.vessel].most} volumes`}
          onChoose={(vessel) => setSheet({ ...sheet, good: { ...good, vessel } })}
        />
        <SheetField {...field} field="bottleL" />
        <SheetField {...field} field="airPressurePa" />
        <Choice
          wide
          label="With"
          value={chosen?.id ?? ''}
          options={sugars.map(({ id, name }) => [id, name])}
          onChoose={setWanted}
        />
      </form>
      <div className="priming-answer">
        {!wrong && outcome && <PrimingAnswer outcome={outcome} vessel={good.vessel} hand={hand} />}
      </div>
    </section>
  );
}

interface PrimingAnswerProps {
  readonly outcome: Outcome;
  readonly vessel: VesselKind;
  readonly hand: GlassHand;
}

function PrimingAnswer({ outcome, vessel, hand }: PrimingAnswerProps) {
  if (outcome.kind === 'refused' || outcome.kind === 'no') {
    const why = outcome.kind === 'no' ? outcome.why : outcome.message;
    return (
      <p className="glass-refused" role="alert">
        <span>
          <WrongMark /> Refused: {why}.
        </span>
      </p>
    );
  }
  if (outcome.kind === 'already') {
    const volumes = outcome.residualGPerL / gramsPerLitreOfVolume;
    return (
      <p role="status">
        The beer holds {volumes.toFixed(2)} volumes already ({outcome.residualGPerL.toFixed(2)} g/L): no sugar is
        needed.
      </p>
    );
  }
  return (
    <>
      <PrimingTable numbers={outcome.numbers} units={hand.units} />
      <CautionList cautions={primingCautions(outcome.numbers, vessel)} />
      <p className="small quiet">By: {formulas.carbonDioxide}.</p>
    </>
  );
}
