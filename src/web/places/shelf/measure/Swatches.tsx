/** A row of computed colours of the dilution, around what it should be; each a step darker than the one before. */
import { useState } from 'react';
import { ratingA430, specificFromRating } from '../../../../core/colour/rating.ts';
import { levelsOn } from '../../../../core/colour/screen.ts';
import { syrupColour } from '../../../../core/colour/syrup.ts';
import { passesOverWhite } from '../../../../core/colour/tristimulus.ts';
import { dryGPerL } from '../../../../core/lot/measure/colour.ts';
import type { Comparison } from '../../../../core/lot/note.ts';
import { dayText } from '../../../parts/dayText.ts';
import { ebcOf } from '../../../parts/figures.ts';
import { likelyHueIndex } from '../../../parts/syrupPaint.ts';
import type { Shown } from '../shown.ts';
import { useTaughtScreen } from './screen/taughtScreen.ts';

interface SwatchesProps {
  readonly shown: Shown;
  readonly reading: Comparison;
  readonly chosen: boolean;
  readonly onChoose: (reading: Comparison) => void;
}

const count = 7;

export function Swatches({ shown, reading, chosen, onChoose }: SwatchesProps) {
  const { ebc, waterShare } = shown.known.figures;
  const screen = useTaughtScreen();
  const taught = screen !== undefined;
  const [shift, setShift] = useState(0);
  const gPerL = dryGPerL(reading, 1 - waterShare.mid);
  const middle = Math.max(1e-4, specificFromRating(ebc.mid, 'tenPercentByWeight')) * gPerL;
  const levels = Array.from({ length: count }, (_, i) => middle * reading.step ** (i - (count - 1) / 2 + shift));
  return (
    <fieldset className="swatch-row">
      <legend>Most like</legend>
      <div className="swatches">
        {levels.map((a430) => {
          const a430Of10 = ratingA430(a430 / gPerL, 'tenPercentByWeight');
          const colour = syrupColour(a430, passesOverWhite * reading.depthCm, likelyHueIndex(a430Of10));
          const { r, g, b } = screen ? levelsOn(screen.steepness, colour) : colour;
          const isAsChosen = chosen && taught === (reading.taught ?? false);
          return (
            <button
              key={a430}
              type="button"
              aria-pressed={isAsChosen && Math.abs(Math.log(reading.a430PerCm / a430)) < 1e-6}
              aria-label={`a sugar of ${ebcOf(a430Of10)} EBC`}
              onClick={() => onChoose({ ...reading, a430PerCm: Number(a430.toPrecision(8)), taught })}
            >
              <svg viewBox="0 0 48 48" preserveAspectRatio="none" aria-hidden="true">
                <rect width="48" height="48" fill={`rgb(${r} ${g} ${b})`} />
              </svg>
              <span className="small">{ebcOf(a430Of10)}</span>
            </button>
          );
        })}
      </div>
      <div className="shelf-acts">
        <button type="button" onClick={() => setShift(shift - 3)}>
          Paler ones
        </button>
        <button type="button" onClick={() => setShift(shift + 3)}>
          Darker ones
        </button>
      </div>
      <p className="small quiet">
        EBC of the sugar below each.{' '}
        {screen
          ? `By eye and on a screen taught on ${dayText(screen.at)}, count on a good quarter either way.`
          : 'By eye and on a screen that nobody taught, count on a third either way.'}
      </p>
    </fieldset>
  );
}
