/** Carbonation as brewers write it: `2.4 vol`, `5 g/L`, or a bare number of volumes. In g/L. */
import { gramsPerLitreOfVolume } from '../../core/beer/carbonDioxide.ts';
import { carbonationRange } from '../../core/beer/vessels.ts';
import { writtenNumber } from '../../core/units/writtenNumber.ts';
import type { Input } from '../input.ts';
import { misused, Stop } from '../stop.ts';

const [least, most] = carbonationRange;
const inGrams = (volumes: number) => (volumes * gramsPerLitreOfVolume).toFixed(2);
const allowed = `${least} to ${most} vol (${inGrams(least)} to ${inGrams(most)} g/L)`;

const units: Readonly<Record<string, number>> = {
  '': gramsPerLitreOfVolume,
  vol: gramsPerLitreOfVolume,
  vols: gramsPerLitreOfVolume,
  volumes: gramsPerLitreOfVolume,
  'g/l': 1,
};

export function carbonation(meaning: string): Input<number> {
  return {
    placeholder: '<vol|g/L>',
    meaning,
    required: true,
    read: (text, flag) => {
      const [, written = '', unit = ''] = /^(.*?\d)\s*([a-z/]*)$/i.exec(text.trim()) ?? [];
      const number = writtenNumber(written);
      if (typeof number !== 'number') misused(flag, text, number.trouble, allowed);
      const factor = units[unit.toLowerCase()];
      if (factor === undefined) misused(flag, text, 'is not in vol or g/L', allowed);
      const gramsPerLitre = number * factor;
      const volumes = gramsPerLitre / gramsPerLitreOfVolume;
      if (volumes >= least - 1e-9 && volumes <= most + 1e-9) return gramsPerLitre;
      const message = `${flag}: '${text}' is outside the range; allowed: ${allowed}`;
      throw new Stop({ kind: 'outsideRange', field: flag, value: text, allowed, message });
    },
  };
}
