/** Which sugars on the shelf bring a beer to a wish, alone or two together; and when none does, the sugar to plan instead. */
import { bracketedRoot } from '../matter/root.ts';
import type { Range } from '../twin/range.ts';
import { dosed, dosedByMiddles, type Wish, wished } from './dose.ts';
import type { Dose, Glass } from './glass.ts';
import { mixture } from './mixture.ts';
import { settled } from './settled.ts';
import { type SugarAim, sugarAim } from './sugarAim.ts';
import { central } from './uncertain.ts';

/** Colour, or how much, or both. */
export interface BeerWish {
  readonly ebc?: number | undefined;
  /** At most one of the two. */
  readonly extractShare?: number | undefined;
  readonly gravity?: number | undefined;
}

export interface Use {
  readonly candidate: number;
  /** As in the glass. */
  readonly massKg: number;
  /** What it may take, by what is uncertain of it; none for two together, where one makes up for the other. */
  readonly massRangeKg: Range | null;
}

export interface Way {
  readonly glass: Glass;
  /** Which of the candidates are in it, in their order. */
  readonly uses: readonly Use[];
}

export interface Unfit {
  readonly candidate: number;
  readonly why: string;
}

export type Reach =
  | { readonly kind: 'ways'; readonly ways: readonly Way[]; readonly unfit: readonly Unfit[] }
  | { readonly kind: 'aim'; readonly aim: SugarAim; readonly unfit: readonly Unfit[] }
  /** Not even a sugar made for it would do. */
  | { readonly kind: 'never'; readonly why: string; readonly unfit: readonly Unfit[] };

export type Candidate = Pick<Dose, 'sugar' | 'added'>;

/** Most of the extract that should come from sugar before the yeast is short of nitrogen (seen quoted; practice). */
const usualMostShare = 0.2;
/** How near a colour is near enough for one sugar to meet two wishes; share of the colour, below what an eye tells (assumed). */
const nearColour = 0.02;

/**
 * @param glass with the doses that are settled; the candidates come on top
 * @param mostShare most of the original extract that all sugars together may bring, share of one
 * @throws RangeError when the wish is empty or names two amounts
 */
export function reach(
  glass: Glass,
  candidates: readonly Candidate[],
  wish: BeerWish,
  mostShare = usualMostShare,
): Reach {
  const amount = amountOf(wish);
  const colour: Wish | undefined = wish.ebc === undefined ? undefined : { kind: 'ebc', value: wish.ebc };
  const first = amount ?? colour;
  if (first === undefined)
    throw new RangeError('wish is empty; allowed: a colour, a share, a gravity, or a colour with one of the others');
  const tried = candidates.map((candidate, at) => alone(glass, candidate, at, first, amount && colour, mostShare));
  const unfit = tried.filter((each) => 'why' in each);
  const ways: Way[] = tried.filter((each) => 'glass' in each);
  if (ways.length === 0 && amount && colour) ways.push(...pairsFor(glass, candidates, amount, colour, mostShare));
  if (ways.length > 0) return { kind: 'ways', ways, unfit };
  const aim = sugarAim(glass, amount, colour);
  return typeof aim === 'string' ? { kind: 'never', why: aim, unfit } : { kind: 'aim', aim, unfit };
}

function amountOf({ extractShare, gravity }: BeerWish): Wish | undefined {
  if (extractShare !== undefined && gravity !== undefined)
    throw new RangeError('wish names a share and a gravity; allowed is one');
  if (extractShare !== undefined) return { kind: 'extractShare', value: extractShare };
  return gravity === undefined ? undefined : { kind: 'gravity', value: gravity };
}

function alone(
  glass: Glass,
  candidate: Candidate,
  at: number,
  first: Wish,
  colour: Wish | undefined,
  mostShare: number,
): Way | Unfit {
  const { sugar } = candidate;
  const found = dosedByMiddles(withDose(glass, candidate, 0), glass.doses.length, first);
  if (found.kind !== 'dosed') {
    const reached = shown(first, found.reaches);
    const why = found.kind === 'already' ? `the beer has ${reached} without it` : `it can't: ${reached} at the most`;
    return { candidate: at, why };
  }
  const massKg = found.massKg;
  const beer = mixture(settled(found.glass, central));
  if (colour && Math.abs(wished(beer, 'ebc') - colour.value) > nearColour * colour.value) {
    return { candidate: at, why: `${massKg.toFixed(3)} kg would give ${shown(colour, wished(beer, 'ebc'))}` };
  }
  const trouble = troubleWith(sugar.stockKg, massKg, beer.extractShare, mostShare);
  if (trouble) return { candidate: at, why: trouble };
  const marked = dosed(found.glass, glass.doses.length, first);
  const massRangeKg = marked.kind === 'dosed' ? marked.massKg : null;
  return { glass: found.glass, uses: [{ candidate: at, massKg, massRangeKg }] };
}

function troubleWith(stockKg: number | null, massKg: number, share: number, mostShare: number): string | undefined {
  if (share > mostShare + 1e-9) return `it takes ${massKg.toFixed(3)} kg, ${(100 * share).toFixed(0)} % of the extract`;
  if (stockKg !== null && massKg > stockKg) return `it takes ${massKg.toFixed(3)} kg, there are ${stockKg.toFixed(3)}`;
  return undefined;
}

/** Every two that lie to both sides of the colour. */
function pairsFor(
  glass: Glass,
  candidates: readonly Candidate[],
  amount: Wish,
  colour: Wish,
  mostShare: number,
): Way[] {
  return candidates.flatMap((one, i) =>
    candidates.flatMap((other, j): Way[] => {
      const way = j > i ? together(glass, [one, i], [other, j], amount, colour) : undefined;
      if (way === undefined || mixture(settled(way.glass, central)).extractShare > mostShare + 1e-9) return [];
      const enough = way.uses.every(
        ({ candidate, massKg }) => massKg <= (candidates[candidate]?.sugar.stockKg ?? massKg),
      );
      return enough ? [way] : [];
    }),
  );
}

type Indexed = readonly [Candidate, number];

/** For each share of the mass that the first alone would need, the second makes up the amount; the share is that of the colour. */
function together(glass: Glass, [one, i]: Indexed, [other, j]: Indexed, amount: Wish, colour: Wish): Way | undefined {
  const most = dosedByMiddles(withDose(glass, one, 0), glass.doses.length, amount);
  if (most.kind !== 'dosed') return undefined;
  const made = (share: number) => {
    const begun = withDose(withDose(glass, one, most.massKg * share), other, 0);
    const found = share === 1 ? undefined : dosedByMiddles(begun, begun.doses.length - 1, amount);
    return found?.kind === 'dosed' ? found.glass : begun;
  };
  const off = (share: number) => wished(mixture(settled(made(share), central)), 'ebc') - colour.value;
  if (Math.sign(off(0)) === Math.sign(off(1))) return undefined;
  const blended = made(bracketedRoot(off, 0, 1, 1e-10));
  const massOf = (back: number) => blended.doses.at(-back)?.massKg ?? 0;
  return {
    glass: blended,
    uses: [
      { candidate: i, massKg: massOf(2), massRangeKg: null },
      { candidate: j, massKg: massOf(1), massRangeKg: null },
    ],
  };
}

function withDose(glass: Glass, candidate: Candidate, massKg: number): Glass {
  return { ...glass, doses: [...glass.doses, { ...candidate, massKg }] };
}

function shown({ kind }: Wish, value: number): string {
  if (kind === 'ebc') return `${value.toFixed(1)} EBC`;
  return kind === 'gravity' ? value.toFixed(4) : `${(100 * value).toFixed(1)} % of the extract from sugar`;
}
