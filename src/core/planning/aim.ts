/** What is wished of a sugar's colour and taste, and how near a sugar comes to it. */
import { dropDepthCm, syrupGPerL } from '../colour/drop.ts';
import { expectedHueIndex } from '../colour/hueIndex.ts';
import { ciede2000, type Lab, labOf } from '../colour/lab.ts';
import { ratingBases } from '../colour/rating.ts';
import { xyzOfSrgb } from '../colour/srgb.ts';
import { syrupLab } from '../colour/syrup.ts';
import { passesOverWhite } from '../colour/tristimulus.ts';
import { requireRange } from '../matter/range.ts';

/** Where a swatch is looked at: as a drop of the syrup on a white plate, or as a 10 % w/w solution in a glass of 1 cm. */
export type Look = 'drop' | 'glass';

export type ColourAim =
  /** A430 per cm of a 10 % w/w solution. */
  | { readonly a430: number }
  /** A swatch to match. */
  | { readonly lab: Lab; readonly look: Look };

/** @param hex as `#6b2a08` */
export function swatchAim(hex: string, look: Look): ColourAim {
  const channel = (at: number): number => Number.parseInt(hex.slice(at, at + 2), 16);
  return { lab: labOf(xyzOfSrgb({ r: channel(1), g: channel(3), b: channel(5) })), look };
}

/** Half a band about an aim: as much A430 to either side, or a share of it. */
export type Within = { readonly a430: number } | { readonly share: number };

/** What counts as landed unless it is said (assumed). */
export const usualWithin = { share: 0.1 } as const satisfies Within;

export function bandAbout(a430: number, within: Within): readonly [number, number] {
  const reach = 'share' in within ? within.share * a430 : within.a430;
  return [Math.max(0, a430 - reach), a430 + reach];
}

/** Indices of `taste.ts`, 0 to 10; one left out doesn't matter. */
export interface TasteAim {
  readonly fruit?: number | undefined;
  readonly roast?: number | undefined;
}

export interface Aim {
  readonly colour: ColourAim;
  readonly taste?: TasteAim | undefined;
}

/** What a kitchen can make lies well within, A430 per cm of a 10 % w/w solution; beyond 52 a sugar would be stronger than bought caramel colour. */
export const a430Range = [0.01, 52] as const;

/** @throws RangeError naming the number that is out of its range */
export function requireAim({ colour, taste }: Aim): void {
  if ('a430' in colour) requireRange('A430 of the aim', colour.a430, ...a430Range);
  else requireRange('lightness of the swatch', colour.lab.l, 0, 100);
  for (const [name, wished] of Object.entries(taste ?? {})) {
    if (wished !== undefined) requireRange(`${name} of the aim`, wished, 0, 10);
  }
}

/** How a sugar looks in the glass that differences are judged in: a 10 % w/w solution, 1 cm of it. */
export function glassLab(a430: number, hueIndex: number): Lab {
  return syrupLab(a430, 1, hueIndex);
}

/** A drop of hard sugar melted, or of syrup, holds little water; a few per cent more or less don't show. */
const dropWaterShare = 0.05;

function seen(a430: number, look: Look): Lab {
  const specific430 = a430 / ratingBases.tenPercentByWeight.gramsPerLitre;
  const hueIndex = expectedHueIndex(specific430, 0).mean;
  if (look === 'glass') return glassLab(a430, hueIndex);
  return syrupLab(specific430 * (1 - dropWaterShare) * syrupGPerL, passesOverWhite * dropDepthCm, hueIndex);
}

export interface AimedColour {
  readonly a430: number;
  /** Difference, dE00, that stays between the swatch and the sugar nearest to it: its hue is not sugar's. None for an aim in numbers. */
  readonly hueLeft: number;
}

/** Steps of the search from pale to dark, and of its refinement: each a factor on the colour. */
const scanSteps = 160;
const refinements = 40;

/** The colour aimed at, as a number: of a swatch, the sugar that looks most like it. */
export function aimedColour({ colour }: Aim): AimedColour {
  if ('a430' in colour) return { a430: colour.a430, hueLeft: 0 };
  const { lab, look } = colour;
  const off = (lnA430: number): number => ciede2000(lab, seen(Math.exp(lnA430), look));
  const [low, high] = a430Range.map(Math.log) as [number, number];
  const step = (high - low) / scanSteps;
  let best = low;
  for (let i = 1; i <= scanSteps; i++) if (off(low + i * step) < off(best)) best = low + i * step;
  let [from, to] = [Math.max(low, best - step), Math.min(high, best + step)];
  for (let i = 0; i < refinements; i++) {
    const [a, b] = [from + (to - from) / 3, to - (to - from) / 3];
    if (off(a) < off(b)) to = b;
    else from = a;
  }
  const found = (from + to) / 2;
  return { a430: Math.exp(found), hueLeft: off(found) };
}
