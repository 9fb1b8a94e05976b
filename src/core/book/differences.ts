/** A cook as rows of numbers, and several of them beside each other: what went in, how each step went, and what came out. */
import type { CookState } from '../log/fold.ts';
import type { StepKind } from '../pan/steps.ts';
import { mostFurtherHolds } from '../planning/request.ts';
import { doingsOf } from './doings.ts';
import { browningAtC, dosesOf, invertingAtC, type StepDose } from './doses.ts';
import type { Landed } from './landed.ts';
import { stepTitles, stepWords } from './words.ts';

export interface Fact {
  readonly what: string;
  readonly unit: string;
  /** Decimals that are shown. */
  readonly digits: number;
  readonly value: number;
}

export interface DifferenceRow extends Omit<Fact, 'value'> {
  /** One for each cook; null where it has none. */
  readonly values: readonly (number | null)[];
}

const [inverting, browning] = [`Inverting, minutes at ${invertingAtC} °C`, `Browning, minutes at ${browningAtC} °C`];

const stepKinds = Object.keys(stepWords) as StepKind[];
/** The route's own hold and as many further ones as there may be. */
const mostOfAKind = 1 + mostFurtherHolds;

const order: readonly string[] = [
  ...['Sugar', 'Water at the start', 'Malt extract', 'Acid', 'Pure alkali given'],
  ...stepKinds.flatMap((kind) =>
    stepTitles(Array(mostOfAKind).fill(kind)).flatMap((title) => [`${title}, length`, `${title}, mean`]),
  ),
  ...[inverting, browning, 'Spoonfuls', 'Cold pan to the end', 'Colour', 'Inverted', 'Water left'],
];

export function factsOf(state: CookState, landed: Landed | null): readonly Fact[] {
  const doings = doingsOf(state);
  const steps = dosesOf(doings);
  const titles = stepTitles(steps.map(({ kind }) => kind));
  const sum = (value: (step: StepDose) => number) => steps.reduce((all, step) => all + value(step), 0);
  return [
    ...wentIn(state),
    ...steps.flatMap(({ minutes, meanC }, at) => {
      return [
        fact(`${titles[at]}, length`, 'min', 0, minutes),
        ...(meanC === null ? [] : [fact(`${titles[at]}, mean`, '°C', 1, meanC)]),
      ];
    }),
    fact(
      `Inverting, minutes at ${invertingAtC} °C`,
      'min',
      0,
      sum(({ invertingMinutes }) => invertingMinutes),
    ),
    fact(
      `Browning, minutes at ${browningAtC} °C`,
      'min',
      0,
      sum(({ browningMinutes }) => browningMinutes),
    ),
    fact(
      'Spoonfuls',
      '',
      0,
      sum(({ spoonfuls }) => spoonfuls),
    ),
    fact('Cold pan to the end', 'min', 0, doings.endS / 60),
    ...(landed ? cameOut(landed) : []),
  ];
}

/** More figures than are shown would only make a kept summary long. */
export const fact = (what: string, unit: string, digits: number, value: number): Fact => ({
  what,
  unit,
  digits,
  value: Number(value.toPrecision(6)),
});

function wentIn({ begun, deeds }: CookState): readonly Fact[] {
  if (!begun) return [];
  const { sucroseKg, waterKg, maltExtractKg, citricAcidKg } = begun.body.amounts.charge;
  const alkaliKg = deeds.reduce((sum, entry) => sum + (entry.kind === 'alkali' ? entry.body.alkaliKg : 0), 0);
  const perKg = (what: string, digits: number, kg: number) => fact(what, 'g/kg sugar', digits, (1000 * kg) / sucroseKg);
  return [
    fact('Sugar', 'g', 0, 1000 * sucroseKg),
    perKg('Water at the start', 0, waterKg),
    perKg('Malt extract', 1, maltExtractKg),
    ...(citricAcidKg > 0 ? [perKg('Acid', 2, citricAcidKg)] : []),
    ...(alkaliKg > 0 ? [perKg('Pure alkali given', 2, alkaliKg)] : []),
  ];
}

function cameOut({ ebc, inverted, waterShare }: Landed): readonly Fact[] {
  return [
    fact('Colour', 'EBC', 0, ebc.mid),
    fact('Inverted', '%', 0, 100 * inverted.mid),
    fact('Water left', '%', 1, 100 * waterShare.mid),
  ];
}

/** Several lists beside each other; what only a later one has stands after what it follows there. */
export function rowsBeside(lists: readonly (readonly Fact[])[]): readonly DifferenceRow[] {
  const rows: (Omit<DifferenceRow, 'values'> & { readonly values: (number | null)[] })[] = [];
  for (const [place, facts] of lists.entries()) {
    let next = 0;
    for (const { value, ...head } of facts) {
      let at = rows.findIndex(({ what }) => what === head.what);
      if (at < 0) {
        at = next;
        rows.splice(at, 0, { ...head, values: lists.map(() => null) });
      }
      rows[at].values[place] = value;
      next = at + 1;
    }
  }
  return rows;
}

/** Rows of several cooks. Steps stand in the order in which sugar goes through them. */
export function differencesOf(cooks: readonly (readonly Fact[])[]): readonly DifferenceRow[] {
  const placeOf = ({ what }: DifferenceRow): number => order.indexOf(what);
  return rowsBeside(cooks).toSorted((a, b) => placeOf(a) - placeOf(b));
}
