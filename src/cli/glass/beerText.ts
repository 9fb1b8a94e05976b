/** A beer with its sugars as a person reads it: a table of numbers without and with them, colour, cost, cautions, formulas. */
import { formulas } from '../../core/beer/formulas.ts';
import type { BeerNumbers, Given } from '../../core/beer/given.ts';
import type { Glass } from '../../core/beer/glass.ts';
import { glassCautions } from '../../core/beer/glassCautions.ts';
import { ebcFromA430, srmFromA430 } from '../../core/colour/scales.ts';
import type { Srgb } from '../../core/colour/srgb.ts';
import { swatch } from '../swatch.ts';
import { pairs, table, wrapped } from '../table.ts';
import { digits, massText, reachText, type Show, type UnitFamily, volumeText } from './shown.ts';

export interface Showing {
  readonly units: UnitFamily;
  readonly coloured: boolean;
}

type Row = readonly [label: string, name: keyof BeerNumbers, show: Show];

const kilojoulesPerKilocalorie = 4.184;

function rows(units: UnitFamily): readonly Row[] {
  return [
    ['volume', 'volumeL', (litres) => volumeText(litres, units)],
    ['original extract °P', 'originalPlato', digits(2)],
    ['original gravity', 'originalGravity', digits(4)],
    ['gravity at pitching', 'pitchingGravity', digits(4)],
    ['gained by inversion °P', 'inversionGainPlato', digits(2)],
    ['extract from sugar %', 'extractShare', digits(1, 100)],
    ['of which ferments %', 'fermentability', digits(0, 100)],
    ['real attenuation %', 'realAttenuation', digits(1, 100)],
    ['apparent attenuation %', 'apparentAttenuation', digits(1, 100)],
    ['final gravity', 'finalGravity', digits(4)],
    ['alcohol % by volume', 'abv', digits(2)],
    ['  by regression', 'abvByRegression', digits(2)],
    ['colour EBC', 'a430PerCm', digits(1, ebcFromA430(1))],
    ['colour SRM', 'a430PerCm', digits(1, srmFromA430(1))],
    ['sodium added mg/L', 'sodiumMgPerL', digits(0)],
    ['calcium added mg/L', 'calciumMgPerL', digits(0)],
    ['energy kcal/100 mL', 'kcalPer100mL', digits(0)],
    ['energy kJ/100 mL', 'kcalPer100mL', digits(0, kilojoulesPerKilocalorie)],
  ];
}

export function beerText(glass: Glass, given: Given, showing: Showing): string {
  return [
    dosesText(glass, showing.units),
    numbersText(given, showing.units),
    pairs([...colourRows(given, showing.coloured), ...costRows(given)]),
    `Mind\n${glassCautions(glass, given)
      .map(({ level, text }) => `  ${wrapped(level === 'note' ? text : `${level.toUpperCase()}: ${text}`, '  ')}`)
      .join('\n')}`,
    `By\n${byText(['gravity', 'extracts', 'alcohol', 'alcoholBeside', 'attenuation', 'colour', 'colourBeside', 'energy'])}`,
  ].join('\n\n');
}

function byText(names: readonly (keyof typeof formulas)[]): string {
  return names.map((name) => `  ${wrapped(`${formulas[name]}.`, '  ')}`).join('\n');
}

function dosesText({ doses }: Glass, units: UnitFamily): string {
  if (doses.length === 0) return 'No sugar';
  return pairs(
    doses.map(({ sugar, massKg, added }) => [massText(massKg, units), `${sugar.name}, ${whenWords[added]}`]),
    '',
  );
}

const whenWords = { kettle: 'into the kettle', late: 'late in the boil', fermenter: 'into the fermenter' } as const;

function numbersText({ beer, without }: Given, units: UnitFamily): string {
  return table(
    [
      { head: '', align: 'left' },
      { head: 'without', align: 'right' },
      { head: 'with', align: 'right' },
      { head: '10-90 %', align: 'right' },
    ],
    rows(units).map(([label, name, show]) => [
      label,
      show(without[name].mid),
      show(beer[name].mid),
      reachText(beer[name], show),
    ]),
  );
}

function colourRows({ empirical, srm, drawn }: Given, coloured: boolean): [string, string][] {
  const { srm: beside, outside, partsFromGPerL } = empirical;
  const parts =
    partsFromGPerL === null
      ? 'within a tenth of the computed'
      : `parts by a tenth from ${partsFromGPerL.toFixed(1)} g/L of sugar on`;
  const shownColour = (srgb: Srgb) => `${coloured ? `${swatch(srgb)} ` : ''}${hex(srgb)}${srgb.clipped ? '*' : ''}`;
  const { without, withSugars, pathCm, difference } = drawn;
  const clipped = [without, ...Object.values(withSugars)].some((srgb) => srgb.clipped);
  return [
    [
      'empirical SRM',
      `${beside.mid.toFixed(1)}${outside ? ' (beyond its 50)' : ''}, computed ${srm.mid.toFixed(1)}; ${parts}`,
    ],
    [
      `through ${Number(pathCm.toPrecision(3))} cm`,
      `${shownColour(without)} without, ${shownColour(withSugars.mid)} with`,
    ],
    ['', `${shownColour(withSugars.low)} to ${shownColour(withSugars.high)}; difference dE00 ${difference.toFixed(1)}`],
    ...(clipped ? [['', '* darker or more saturated than a screen can show'] as [string, string]] : []),
  ];
}

function hex({ r, g, b }: Srgb): string {
  return `#${[r, g, b].map((channel) => channel.toString(16).padStart(2, '0')).join('')}`;
}

function costRows({ cost }: Given): [string, string][] {
  if (cost === null) return [];
  const { sugars, perLitre, bought } = cost;
  const beside = bought ? `; the same solids bought ${bought.mid.toFixed(2)}` : '';
  return [['cost', `${sugars.mid.toFixed(2)}, ${perLitre.mid.toFixed(3)} a litre${beside}`]];
}
