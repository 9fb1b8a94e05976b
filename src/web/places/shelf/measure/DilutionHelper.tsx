/** Which dilution puts the colour where it is read best, with this cell and this scale. */
import { useState } from 'react';
import { specificFromRating } from '../../../../core/colour/rating.ts';
import { dilutionFor } from '../../../../core/lot/measure/dilution.ts';
import type { MadeUp } from '../../../../core/lot/note.ts';
import { Choice } from '../../../parts/Choice.tsx';
import type { Shown } from '../shown.ts';

interface HelperProps {
  readonly shown: Shown;
  /** All that the light passes, cm. */
  readonly pathCm: number;
  /** An instrument shows the absorbance: what should it be? */
  readonly shows?: boolean;
  readonly onTake: (made: MadeUp) => void;
}

const scales = [
  ['1', 'shows 1 g'],
  ['0.1', 'shows 0.1 g'],
  ['0.01', 'shows 0.01 g'],
] as const;
const volumes = [
  ['100', '100 mL'],
  ['250', '250 mL'],
  ['1000', '1 L'],
] as const;
/** Less than this is not measured well with a kitchen's or a pharmacy's syringe (judgement), mL. */
const leastTakenMl = 10;
type Scale = (typeof scales)[number][0];
type Volume = (typeof volumes)[number][0];

export function DilutionHelper({ shown, pathCm, shows, onTake }: HelperProps) {
  const [scale, setScale] = useState<Scale>('0.1');
  const [volume, setVolume] = useState<Volume>('100');
  const { ebc, waterShare } = shown.known.figures;
  const specific = (value: number) => Math.max(1e-5, specificFromRating(value, 'tenPercentByWeight'));
  const plan = dilutionFor({
    specific430: { low: specific(ebc.low), mid: specific(ebc.mid), high: specific(ebc.high) },
    solids: Math.max(0.3, 1 - waterShare.mid),
    pathCm: Math.min(10, pathCm),
    totalMl: Number(volume),
    divisionG: Number(scale),
  });
  const { sugarG, totalMl, fold, absorbance } = plan;
  const grams = Number(sugarG.toPrecision(4));
  const takenMl = Math.max(leastTakenMl, totalMl / fold);
  return (
    <details className="dilution">
      <summary>Which dilution?</summary>
      <div className="shelf-fields">
        <Choice label="The scale" value={scale} options={scales} onChoose={setScale} />
        <Choice label="Made up to" value={volume} options={volumes} onChoose={setVolume} />
      </div>
      <p>
        <strong>
          {grams} g of the sugar, made up to {totalMl} mL with water
        </strong>
        {fold > 1 && (
          <strong>
            ; of that, {Number(takenMl.toPrecision(3))} mL made up to {Number((takenMl * fold).toPrecision(3))} mL
          </strong>
        )}
        .{' '}
        {shows && (
          <>
            It should show {absorbance.mid.toFixed(2)} ({absorbance.low.toFixed(2)} to {absorbance.high.toFixed(2)}).
          </>
        )}
      </p>
      {plan.trouble && <p role="alert">Not quite: {plan.trouble}.</p>}
      <button type="button" onClick={() => onTake({ sugarG: grams, totalMl, fold })}>
        Use this dilution
      </button>
    </details>
  );
}
