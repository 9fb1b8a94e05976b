/** Any colour of the screen as an aim: the sugar that looks most like it is found, and shown beside it where it is another. */
import { useId, useState } from 'react';
import { likelyHueIndex } from '../../../../core/colour/pool.ts';
import { syrupColour } from '../../../../core/colour/syrup.ts';
import { aimedColour, swatchAim } from '../../../../core/planning/aim.ts';
import { justVisible } from '../../../../core/planning/odds.ts';
import { ebcOf } from '../../../parts/figures.ts';

interface PickedColourProps {
  /** The colour in hand; what was picked holds for the one that was found for it alone. */
  readonly a430: number | undefined;
  readonly onPick: (a430: number) => void;
}

interface Picked {
  readonly hex: string;
  readonly a430: number;
  /** Difference from it that no sugar can close, dE00. */
  readonly hueLeft: number;
}

/** Before anything is picked: amber, in the midst of what a kitchen makes. */
const usualA430 = 1.8;
/** As the field holds it, with three figures. */
const sameColour = (a: number, b: number | undefined): boolean => b !== undefined && Math.abs(a / b - 1) < 0.01;

export function PickedColour({ a430, onPick }: PickedColourProps) {
  const id = useId();
  const [picked, setPicked] = useState<Picked>();
  const holds = picked !== undefined && sameColour(picked.a430, a430) ? picked : undefined;
  const pick = (hex: string) => {
    const found = aimedColour({ colour: swatchAim(hex, 'glass') });
    setPicked({ hex, ...found });
    onPick(found.a430);
  };
  return (
    <div className="picked-colour">
      <label htmlFor={id}>or like any colour</label>
      <input
        id={id}
        type="color"
        value={holds?.hex ?? hexOf(a430 ?? usualA430)}
        aria-describedby={`${id}-says`}
        onChange={({ target }) => pick(target.value)}
      />
      <p id={`${id}-says`} className="small" role="status">
        {holds && holds.hueLeft > justVisible && (
          <>
            <span className="paint" style={{ background: hexOf(holds.a430) }} />
            No sugar looks quite like that. The nearest is at {ebcOf(holds.a430)} EBC, {holds.hueLeft.toFixed(0)} just
            visible steps away.
          </>
        )}
      </p>
    </div>
  );
}

/** 1 cm of a 10 % solution, as the swatches are painted. */
function hexOf(a430: number): string {
  const { r, g, b } = syrupColour(a430, 1, likelyHueIndex(a430));
  return `#${[r, g, b].map((channel) => channel.toString(16).padStart(2, '0')).join('')}`;
}
