/** What a check found, line by line: the same words on the page and in the terminal. */
import type { Found } from './check.ts';
import type { Estimate } from './estimate.ts';
import type { Heating } from './heating.ts';

export interface FoundLine {
  readonly label: string;
  readonly value: string;
  /** The 10-90 % range. */
  readonly range?: string;
}

export function foundLines(found: Found): readonly FoundLine[] {
  switch (found.kind) {
    case 'boilingWater':
    case 'ice':
      return [line('The thermometer shows more by', found.offsetC, 2, 'K')];
    case 'lag':
      return [
        line('Lag of the thermometer', found.lagS, 1, 's'),
        { label: 'Readings off the curve by', value: `${found.offC.toFixed(1)} K` },
      ];
    case 'spoons': {
      const { scatter } = found;
      const percent = (share: number) => (100 * share).toFixed(0);
      return [
        line('A spoonful', found.meanKg, 2, 'g', 1000),
        line('Times what it should hold', found.factor, 2, ''),
        {
          label: 'Single spoonfuls scatter by',
          value: `${percent(scatter.value)} %`,
          range: `${percent(scatter.low)} to ${percent(scatter.high)} %`,
        },
      ];
    }
    case 'heating':
      return heatingLines(found);
    case 'dial': {
      const { heating, curve } = found;
      return [
        line('Heat for each number of the dial', curve.perNotchW, 0, 'W'),
        ...curve.ratios.map(({ notch, ratio }) => line(`Setting ${notch}, times an even dial`, ratio, 2, '')),
        {
          label: 'The dial',
          value: curve.even
            ? 'goes evenly, as far as these tests tell'
            : 'does not go evenly: heats between these settings are less sure than plans take them to be',
        },
        ...heatingLines(heating),
      ];
    }
  }
}

function heatingLines({ topW, stoveEfficiency, stoveLagS, lossFactor, panJPerK, left, offC }: Heating): FoundLine[] {
  const told = (spreadLeft: number, one: FoundLine): FoundLine[] =>
    spreadLeft < 0.9 ? [one] : [{ label: one.label, value: 'not told by this test' }];
  return [
    line('Heat into the pan at the top setting', topW, 0, 'W'),
    line('Share of the rated power', stoveEfficiency, 1, '%', 100),
    ...told(left.stoveLagS, line('Lag of the ring', stoveLagS, 0, 's')),
    ...told(left.lossFactor, line('Heat loss, times the usual', lossFactor, 2, '')),
    ...told(left.panJPerK, line('The pan itself takes up', panJPerK, 0, 'J/K')),
    { label: 'Readings off the fit by', value: `${offC.toFixed(2)} K` },
  ];
}

function line(label: string, { value, low, high }: Estimate, digits: number, unit: string, scale = 1): FoundLine {
  const text = (one: number) => (one * scale).toFixed(digits);
  const after = unit && ` ${unit}`;
  return { label, value: `${text(value)}${after}`, range: `${text(low)} to ${text(high)}${after}` };
}
