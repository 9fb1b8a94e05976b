/** CIELAB and colour difference. Standards: ISO/CIE 11664-4:2019 (CIELAB), ISO/CIE 11664-6:2022 (CIEDE2000). */
import { differenceCiede2000 } from 'culori/fn';
import { screenViewing, type Xyz } from './tristimulus.ts';

export interface Lab {
  /** Lightness, 0 to 100. */
  readonly l: number;
  /** Green (-) to red (+). */
  readonly a: number;
  /** Blue (-) to yellow (+). */
  readonly b: number;
}

/** CIELAB of light beside the white of its own illuminant. */
export function labOf({ x, y, z }: Xyz, white: Xyz = screenViewing.white): Lab {
  const fx = lightness(x / white.x);
  const fy = lightness(y / white.y);
  const fz = lightness(z / white.z);
  return { l: 116 * fy - 16, a: 500 * (fx - fy), b: 200 * (fy - fz) };
}

/** Cube root, continued by its tangent at 24/116 towards black. */
function lightness(ratio: number): number {
  return ratio > (24 / 116) ** 3 ? Math.cbrt(ratio) : (841 / 108) * ratio + 16 / 116;
}

const ciede2000Of = differenceCiede2000();

/** Colour difference dE00; about 1 is just visible side by side (common practice, no source), 2 to 3 plain to see. */
export function ciede2000(one: Lab, other: Lab): number {
  return ciede2000Of({ mode: 'lab65', ...one }, { mode: 'lab65', ...other });
}
