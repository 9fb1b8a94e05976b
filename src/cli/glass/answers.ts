/** What `glass` was asked, and the answer: a beer, ways to a wish, an aim to plan, or a swap. */
import { givenBy } from '../../core/beer/given.ts';
import type { Glass } from '../../core/beer/glass.ts';
import { type BeerWish, type Reach, reach, type Use } from '../../core/beer/reach.ts';
import { type Equal, scaledTo, swapped } from '../../core/beer/swap.ts';
import { flagOf } from '../input.ts';
import { Stop } from '../stop.ts';
import { pairs } from '../table.ts';
import { beerText, type Showing } from './beerText.ts';
import { beerDocument, format } from './document.ts';
import { massText } from './shown.ts';
import type { WrittenSugar } from './sugarFrom.ts';

export interface Asked {
  /** Without doses. */
  readonly glass: Glass;
  readonly sugars: readonly WrittenSugar[];
  readonly wish: BeerWish | undefined;
  readonly mostShare: number;
  readonly swap: WrittenSugar | undefined;
  readonly equal: Equal;
  readonly toVolumeL: number | undefined;
  readonly boughtPricePerKg: number | undefined;
}

export interface Answered {
  readonly document: unknown;
  readonly text: (showing: Showing) => string;
}

export function answer(asked: Asked): Answered {
  try {
    if (asked.wish) return toWish(asked, asked.wish);
    const glass = { ...asked.glass, doses: asked.sugars.map(weighed) };
    return asked.swap ? toSwap(asked, glass, asked.swap) : ofBeer(asked, glass);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw new Stop({ kind: 'outsideRange', field: 'glass', message: `no such beer: ${error.message}` });
  }
}

function weighed({ sugar, massKg, added }: WrittenSugar) {
  if (massKg === undefined) {
    const message = `--sugar mass is missing for ${sugar.name}: say it, or what it should reach (${flagOf('toEbc')}, ${flagOf('toShare')}, ${flagOf('toGravity')})`;
    throw new Stop({ kind: 'misused', field: '--sugar mass', message });
  }
  return { sugar, massKg, added };
}

function ofBeer({ toVolumeL, boughtPricePerKg }: Asked, glass: Glass): Answered {
  const sized = toVolumeL === undefined ? glass : scaledTo(glass, toVolumeL);
  const given = givenBy(sized, { boughtPricePerKg });
  return {
    document: { format, kind: 'beer', ...beerDocument(sized, given) },
    text: (showing) => beerText(sized, given, showing),
  };
}

function toSwap(asked: Asked, glass: Glass, { sugar }: WrittenSugar): Answered {
  const [before, second] = glass.doses;
  if (before === undefined || second !== undefined) {
    throw new Stop({
      kind: 'misused',
      field: '--swap',
      message: '--swap takes the place of one --sugar: give exactly one',
    });
  }
  const found = swapped(glass, 0, sugar, asked.equal);
  if (found.kind !== 'dosed') {
    const message = `${sugar.name} can't take the place of ${before.sugar.name} at equal ${asked.equal}`;
    throw new Stop({ kind: 'failed', field: '--swap', message });
  }
  const beer = ofBeer(asked, found.glass);
  const { low, mid, high } = found.massKg;
  return {
    document: { ...(beer.document as object), kind: 'swap', equal: asked.equal, massKg: found.massKg },
    text: (showing) => {
      const mass = (kg: number) => massText(kg, showing.units);
      const head = `${mass(mid)} of ${sugar.name} (${mass(low)} to ${mass(high)}) for ${mass(before.massKg)} of ${before.sugar.name}, equal ${asked.equal}`;
      return `${head}\n\n${beer.text(showing)}`;
    },
  };
}

function toWish(asked: Asked, wish: BeerWish): Answered {
  const fixed = asked.sugars.filter(({ massKg }) => massKg !== undefined).map(weighed);
  const candidates = asked.sugars.filter(({ massKg }) => massKg === undefined);
  const found = reach({ ...asked.glass, doses: fixed }, candidates, wish, asked.mostShare);
  const unfit = found.unfit.map(({ candidate, why }) => ({ name: candidates[candidate]?.sugar.name ?? '', why }));
  if (found.kind === 'ways') {
    const beers = found.ways.map(({ glass, uses }) => ({ ...ofBeer(asked, glass), uses }));
    return {
      document: {
        format,
        kind: 'ways',
        ways: beers.map(({ document, uses }) => ({ ...(document as object), uses })),
        unfit,
      },
      text: (showing) =>
        [
          ...beers.map(({ text, uses }) => `${usesText(uses, candidates, showing.units)}${text(showing)}`),
          ...unfitText(unfit),
        ].join('\n\n'),
    };
  }
  if (found.kind === 'never') {
    throw new Stop({ kind: 'failed', field: 'wish', message: `No sugar brings it there: ${found.why}` });
  }
  return {
    document: { format, kind: 'aim', aim: found.aim, unfit },
    text: ({ units }) => [aimText(found.aim, units), ...unfitText(unfit)].join('\n\n'),
  };
}

/** The range of the mass, where there is one; the masses themselves stand at the head of the beer. */
function usesText(uses: readonly Use[], candidates: readonly WrittenSugar[], units: Showing['units']): string {
  return uses
    .map(({ candidate, massRangeKg }) => {
      const name = candidates[candidate]?.sugar.name ?? '';
      if (massRangeKg === null) return '';
      const { low, high } = massRangeKg;
      return `It may take ${massText(low, units)} to ${massText(high, units)} of ${name}.\n\n`;
    })
    .join('');
}

function aimText(
  { massKg, massRangeKg, ebcRange, darkerThanKitchen }: Extract<Reach, { kind: 'aim' }>['aim'],
  units: Showing['units'],
): string {
  const mass = `${massText(massKg, units)} (${massText(massRangeKg.low, units)} to ${massText(massRangeKg.high, units)})`;
  const ebc = (value: number): string => String(Number(value.toPrecision(3)));
  const colour = ebcRange
    ? [
        [
          'colour',
          `${ebc(ebcRange.mid)} EBC (${ebc(ebcRange.low)} to ${ebc(ebcRange.high)}) of a 10 % w/w solution`,
        ] as const,
      ]
    : [];
  const warning = darkerThanKitchen
    ? '\n\nThat is darker than what a kitchen makes: take more sugar, or less colour.'
    : '';
  return `No sugar given does it. To plan instead:\n${pairs([['mass', mass], ...colour])}${warning}`;
}

function unfitText(unfit: readonly { readonly name: string; readonly why: string }[]): string[] {
  return unfit.length > 0 ? [`Not with\n${pairs(unfit.map(({ name, why }) => [name, why]))}`] : [];
}
