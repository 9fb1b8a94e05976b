/** Colours to wish for, painted as 1 cm of a 10 % solution looks. */
import { a430FromEbc } from '../../../../core/colour/scales.ts';
import { syrupColour } from '../../../../core/colour/syrup.ts';
import { likelyHueIndex } from '../../../parts/syrupPaint.ts';
import { type ColourScale, written } from './colourScales.ts';

interface SwatchesProps {
  readonly scale: ColourScale;
  readonly a430: number | undefined;
  readonly onPick: (a430: number) => void;
}

/** From straw to nearly black, each step plainly seen, EBC. */
const ebcs = [5, 12, 25, 45, 80, 120, 180, 260];

export function Swatches({ scale, a430, onPick }: SwatchesProps) {
  return (
    <fieldset className="swatches">
      <legend>or as dark as one of these</legend>
      {ebcs.map((ebc) => {
        const each = a430FromEbc(ebc);
        const { r, g, b } = syrupColour(each, 1, likelyHueIndex(each));
        return (
          <button
            key={ebc}
            type="button"
            aria-pressed={a430 !== undefined && Math.abs(a430 / each - 1) < 0.02}
            onClick={() => onPick(each)}
          >
            <span className="paint" style={{ background: `rgb(${r} ${g} ${b})` }} />
            <span className="small">
              {written(each, scale)}
              <span className="unseen"> {scale}</span>
            </span>
          </button>
        );
      })}
    </fieldset>
  );
}
