/** How the drawn beer looks in daylight through its glass, without and with the sugars: their spectra add. */
import { ciede2000, labOf } from '../colour/lab.ts';
import { averageBeerAbsorbance, mixedAbsorbance, pigmentAbsorbance, type Spectrum } from '../colour/spectrum.ts';
import { type Srgb, srgbOf } from '../colour/srgb.ts';
import { transmittedXyz } from '../colour/tristimulus.ts';
import type { Range } from '../twin/range.ts';
import type { Glass } from './glass.ts';
import { mixture } from './mixture.ts';
import { settled } from './settled.ts';
import { central } from './uncertain.ts';

export interface DrawnGlass {
  readonly pathCm: number;
  readonly without: Srgb;
  readonly withSugars: { readonly low: Srgb; readonly mid: Srgb; readonly high: Srgb };
  /** CIEDE2000 between without and with; about 1 is just visible side by side (common practice, no source). */
  readonly difference: number;
}

/** @param a430PerCm of the beer with the sugars */
export function drawnGlass(glass: Glass, a430PerCm: Range): DrawnGlass {
  const { pathCm, rest } = glass;
  const look = (spectrum: Spectrum) => transmittedXyz(spectrum, pathCm);
  const spectra = spectraOf(glass);
  const without = look(averageBeerAbsorbance(rest.a430PerCm));
  const at = (total: number) => look(spectra(total));
  return {
    pathCm,
    without: srgbOf(without),
    withSugars: { low: srgbOf(at(a430PerCm.low)), mid: srgbOf(at(a430PerCm.mid)), high: srgbOf(at(a430PerCm.high)) },
    difference: ciede2000(labOf(without), labOf(at(a430PerCm.mid))),
  };
}

/** Spectrum of the beer at an A430 in all: the rest is an average beer, what is beyond it has the sugars' shape. */
function spectraOf(glass: Glass): (a430PerCm: number) => Spectrum {
  const middle = settled(glass, central);
  const { volumeL } = mixture(middle);
  const restA430 = (glass.rest.a430PerCm * glass.rest.volumeL) / volumeL;
  const weights = middle.doses.map(({ massKg, solids, specific430 }) => massKg * solids * specific430);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return (a430PerCm) => {
    const beyond = Math.max(0, a430PerCm - restA430);
    const sugars = glass.doses.map(({ sugar }, at) =>
      pigmentAbsorbance(total > 0 ? (beyond * (weights[at] ?? 0)) / total : 0, sugar.hueIndex),
    );
    return mixedAbsorbance(averageBeerAbsorbance(restA430), ...sugars);
  };
}
