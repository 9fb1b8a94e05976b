/** The reverse of the glass: how much of one sugar brings the beer to a colour, a gravity or a share of its extract. */
import { ebcFromA430 } from '../colour/scales.ts';
import { requireRange } from '../matter/range.ts';
import { bracketedRoot } from '../matter/root.ts';
import type { Range } from '../twin/range.ts';
import { type Glass, requireGlass } from './glass.ts';
import { type Mixture, mixture } from './mixture.ts';
import { type SettledGlass, settled } from './settled.ts';
import { central, rangesOf } from './uncertain.ts';
import { wortOf } from './wort.ts';

/** EBC of the finished beer; share of the original extract that all sugars bring; original gravity with all sugars in it. */
export type WishKind = 'ebc' | 'extractShare' | 'gravity';

export interface Wish {
  readonly kind: WishKind;
  readonly value: number;
}

export const wishRanges = { ebc: [0, 250], extractShare: [0, 0.6], gravity: [1, 1.14] } as const satisfies Record<
  WishKind,
  readonly [number, number]
>;

/** The beer has more of it without this sugar; or there is no mass of it that would do. */
interface NotDosed {
  readonly kind: 'already' | 'beyond';
  readonly reaches: number;
}

interface Found<Mass> {
  readonly kind: 'dosed';
  readonly massKg: Mass;
  /** With the middle of that mass. */
  readonly glass: Glass;
}

export type Dosed<Mass = Range> = Found<Mass> | NotDosed;

/** No beer is stronger than this before it ferments, P; the search ends there. */
const strongestPlato = 33;
const toleranceKg = 1e-13;

/**
 * @param at which dose is to be found; its mass in `glass` doesn't count
 * @returns the mass whose beer, by the middles of all ranges, is as wished: to 1e-9. Marks of the mass: those of what is uncertain
 * @throws RangeError when the glass or the wish is outside its limits
 */
export function dosed(glass: Glass, at: number, wish: Wish): Dosed {
  const middle = dosedByMiddles(glass, at, wish);
  if (middle.kind !== 'dosed') return middle;
  const { massKg } = rangesOf((pick) => ({ massKg: massFor(settled(glass, pick), at, wish) }));
  return { ...middle, massKg };
}

/** The same without the marks, for searches. */
export function dosedByMiddles(glass: Glass, at: number, wish: Wish): Dosed<number> {
  requireGlass(glass);
  const [low, high] = wishRanges[wish.kind];
  requireRange(`wished ${wish.kind}`, wish.value, low, high);
  const middle = settled(glass, central);
  const reach = (massKg: number) => wished(mixture(withMass(middle, at, massKg)), wish.kind);
  const [least, most] = [reach(0), reach(mostOf(middle, at))];
  if (least > wish.value) return { kind: 'already', reaches: least };
  if (most < wish.value) return { kind: 'beyond', reaches: most };
  const massKg = massFor(middle, at, wish);
  return { kind: 'dosed', massKg, glass: withDoseOf(glass, at, massKg) };
}

export function wished({ a430PerCm, extractShare, originalGravity }: Mixture, kind: WishKind): number {
  return { ebc: ebcFromA430(a430PerCm), extractShare, gravity: originalGravity }[kind];
}

export function withDoseOf(glass: Glass, at: number, massKg: number): Glass {
  return { ...glass, doses: glass.doses.map((dose, i) => (i === at ? { ...dose, massKg } : dose)) };
}

/** The mass of one dose in a settled glass; held to what can be dosed where a draw can't reach the wish. */
export function massFor(glass: SettledGlass, at: number, { kind, value }: Wish): number {
  const off = (massKg: number) => wished(mixture(withMass(glass, at, massKg)), kind) - value;
  const mostKg = mostOf(glass, at);
  if (off(0) >= 0) return 0;
  if (off(mostKg) <= 0) return mostKg;
  return bracketedRoot(off, 0, mostKg, toleranceKg);
}

function withMass(glass: SettledGlass, at: number, massKg: number): SettledGlass {
  return { ...glass, doses: glass.doses.map((dose, i) => (i === at ? { ...dose, massKg } : dose)) };
}

/** The mass with which the wort would be as strong as can be, kg, by mass balance; 0 when the rest is stronger already. */
function mostOf(glass: SettledGlass, at: number): number {
  const { rest, doses } = glass;
  const others = doses.filter((_, i) => i !== at);
  const malt = wortOf(rest.volumeL, rest.gravity);
  const massKg = malt.massKg + others.reduce((sum, dose) => sum + dose.massKg, 0);
  const extractKg = malt.extractKg + others.reduce((sum, dose) => sum + dose.massKg * dose.solids, 0);
  const solids = doses[at]?.solids ?? Number.NaN;
  const share = strongestPlato / 100;
  return Math.max(0, (share * massKg - extractKg) / (solids - share));
}
