/** The fields of each sugar in the glass; their names carry its place. */
import { glassRanges } from '../../../core/beer/glass.ts';
import {
  type BoughtSugar,
  type KeptDose,
  type KeptGlass,
  type KeptSugar,
  keptGlassRanges as ranges,
} from '../../../core/beer/keptGlass.ts';
import type { Entries, Entry } from '../../parts/entry.ts';
import { nameEntry, plainEntry } from '../../parts/numberEntry.ts';
import { optional } from './optional.ts';
import { type ColourAs, colourPrints, type ExtractAs, extractPrints } from './printedAs.ts';
import { massEntry, shareEntry } from './quantities.ts';
import type { GlassUnits } from './shown.ts';

export interface PrintedAs {
  readonly extract: ExtractAs;
  readonly colour: ColourAs;
}

export function doseEntries({ doses }: KeptGlass, units: GlassUnits, as: PrintedAs): Entries<KeptGlass> {
  return Object.assign({}, ...doses.map((dose, at) => entriesOf(dose, at, units, as)));
}

export function withDose(glass: KeptGlass, at: number, change: Partial<KeptDose>): KeptGlass {
  return { ...glass, doses: glass.doses.map((dose, i) => (i === at ? { ...dose, ...change } : dose)) };
}

function entriesOf({ sugar }: KeptDose, at: number, units: GlassUnits, as: PrintedAs): Entries<KeptGlass> {
  const field = (name: string) => `doses.${at}.${name}`;
  return {
    [field('mass')]: massEntry(
      {
        label: 'How much',
        range: glassRanges.massKg,
        get: (glass) => doseAt(glass, at).massKg,
        set: (glass, massKg) => withDose(glass, at, { massKg }),
      },
      units,
    ),
    ...named(field, toldEntries(at)),
    ...(sugar.kind === 'bought' && named(field, boughtEntries(at, as))),
  };
}

function named(field: (name: string) => string, entries: Entries<KeptGlass>): Entries<KeptGlass> {
  return Object.fromEntries(Object.entries(entries).map(([name, entry]) => [field(name), entry]));
}

function toldEntries(at: number): Entries<KeptGlass> {
  const told = (field: 'fermentable' | 'pricePerKg', label: string, hint: string) => ({
    label,
    hint,
    range: ranges[field],
    get: (glass: KeptGlass) => sugarAt(glass, at)[field] ?? 0,
    set: (glass: KeptGlass, value: number | null) => withSugar(glass, at, { [field]: value }),
  });
  const emptied = (field: 'fermentable' | 'pricePerKg', entry: Entry<KeptGlass>) =>
    optional(
      entry,
      (glass) => sugarAt(glass, at)[field] === null,
      (glass) => withSugar(glass, at, { [field]: null }),
    );
  return {
    alkali: plainEntry({
      label: 'Alkali, pure',
      hint: 'for each kg of sugar in the pan',
      // Less is none, which has a choice of its own.
      range: [0.1, ranges.alkaliGPerKg[1]],
      unit: 'g/kg',
      get: (glass: KeptGlass) => sugarAt(glass, at).alkali?.gramsPerKgSucrose ?? 0,
      set: (glass, gramsPerKgSucrose) =>
        withSugar(glass, at, {
          alkali: { substance: sugarAt(glass, at).alkali?.substance ?? 'sodiumHydroxide', gramsPerKgSucrose },
        }),
    }),
    fermentable: emptied(
      'fermentable',
      shareEntry(told('fermentable', 'Ferments', 'of its solids, if you measured it; else by its colour')),
    ),
    pricePerKg: emptied(
      'pricePerKg',
      plainEntry({ ...told('pricePerKg', 'Price of a kg', 'as it is; may stay empty'), unit: '' }),
    ),
  };
}

function boughtEntries(at: number, as: PrintedAs): Entries<KeptGlass> {
  const extract = extractPrints[as.extract];
  const colour = colourPrints[as.colour];
  const sugar = (glass: KeptGlass) => sugarAt(glass, at) as BoughtSugar;
  const rounded = (value: number) => Number(value.toPrecision(4));
  return {
    name: nameEntry(
      'Its name',
      (glass) => sugar(glass).name,
      (glass, name) => withSugar(glass, at, { name }),
    ),
    extract: plainEntry({
      label: 'Extract printed',
      range: extract.range,
      unit: extract.unit,
      get: (glass: KeptGlass) => rounded(extract.fromSolids(sugar(glass).solids)),
      set(glass, printed) {
        const { solids: before, specific430AsIs } = sugar(glass);
        const solids = extract.toSolids(printed);
        // ICUMSA units are by the solids: the number that stands in the field stays true.
        const factor = as.colour === 'icumsa' ? solids / before : 1;
        return withSugar(glass, at, { solids, specific430AsIs: factor * specific430AsIs });
      },
    }),
    colour: plainEntry({
      label: 'Colour printed',
      range: [0, Math.floor(colour.fromSpecific(ranges.specific430AsIs[1], 1))],
      unit: colour.unit,
      get: (glass: KeptGlass) => rounded(colour.fromSpecific(sugar(glass).specific430AsIs, sugar(glass).solids)),
      set: (glass, printed) =>
        withSugar(glass, at, { specific430AsIs: colour.toSpecific(printed, sugar(glass).solids) }),
    }),
    inverted: optional(
      shareEntry({
        label: 'Inverted',
        hint: 'table sugar 0, invert 100; may stay empty',
        range: ranges.inverted,
        get: (glass: KeptGlass) => sugar(glass).inverted ?? 0,
        set: (glass, inverted) => withSugar(glass, at, { inverted }),
      }),
      (glass) => sugar(glass).inverted === null,
      (glass) => withSugar(glass, at, { inverted: null }),
    ),
  };
}

function doseAt(glass: KeptGlass, at: number): KeptDose {
  return glass.doses[at] as KeptDose;
}

function sugarAt(glass: KeptGlass, at: number): KeptSugar {
  return doseAt(glass, at).sugar;
}

function withSugar(glass: KeptGlass, at: number, change: Partial<BoughtSugar> | Partial<KeptSugar>): KeptGlass {
  return withDose(glass, at, { sugar: { ...sugarAt(glass, at), ...change } as KeptSugar });
}
