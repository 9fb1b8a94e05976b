import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../../test/evenly.ts';
import { specificFromRating } from '../colour/rating.ts';
import { a430FromEbc, ebcFromA430 } from '../colour/scales.ts';
import { boughtSugar } from './boughtSugar.ts';
import { dosed, dosedByMiddles, type WishKind, wished } from './dose.ts';
import type { Glass } from './glass.ts';
import { mixture } from './mixture.ts';
import { reach } from './reach.ts';
import { settled } from './settled.ts';
import { scaledTo, swapped } from './swap.ts';
import { central } from './uncertain.ts';

const rest = {
  volumeL: 20,
  gravity: 1.06,
  a430PerCm: a430FromEbc(12),
  attenuation: 0.75,
  sodiumMgPerL: 28,
  calciumMgPerL: 50,
};
const sugarOf = (name: string, ebc: number, solids = 0.98) =>
  boughtSugar({ name, solids, inverted: 0.9, specific430AsIs: specificFromRating(ebc, 'tenPercentByWeight') });
const [pale, dark] = [sugarOf('pale', 20), sugarOf('dark', 250)];
const glass: Glass = { rest, doses: [{ sugar: dark, massKg: 0.5, added: 'kettle' }], kettleLossL: 1, pathCm: 7 };
const beer = (of: Glass) => mixture(settled(of, central));

it('the reverse of the glass gives the mass back within 1e-6 kg, by colour, share and gravity', () => {
  let worst = 0;
  fc.assert(
    fc.property(
      evenly(0.01, 4),
      evenly(30, 600),
      fc.constantFrom<WishKind>('ebc', 'extractShare', 'gravity'),
      fc.constantFrom('kettle' as const, 'fermenter' as const),
      (massKg, ebc, kind, added) => {
        const forward: Glass = { ...glass, doses: [{ sugar: sugarOf('any', ebc), massKg, added }] };
        const value = wished(beer(forward), kind);
        if (kind === 'ebc' && value > 250) return true;
        const back = dosedByMiddles(forward, 0, { kind, value });
        const off = back.kind === 'dosed' ? Math.abs(back.massKg - massKg) : Number.POSITIVE_INFINITY;
        worst = Math.max(worst, off);
        return off < 1e-6;
      },
    ),
  );
  console.info(`reverse of forward: worst ${worst.toExponential(1)} kg`);
});

it('marks of the mass lie around it: a sugar that may be paler takes more', () => {
  const found = dosed(glass, 0, { kind: 'ebc', value: 45 });
  if (found.kind !== 'dosed') throw new Error(found.kind);
  const { low, mid, high } = found.massKg;
  expect(low).toBeLessThan(mid);
  expect(mid).toBeLessThan(high);
  expect(ebcFromA430(beer(found.glass).a430PerCm)).toBeCloseTo(45, 9);
});

it('a wish that the beer is past, or that no mass meets, says what it comes to', () => {
  expect(dosed(glass, 0, { kind: 'ebc', value: 5 })).toEqual({ kind: 'already', reaches: expect.closeTo(12, 9) });
  const faint = { ...glass, doses: [{ sugar: pale, massKg: 0, added: 'kettle' as const }] };
  expect(dosed(faint, 0, { kind: 'ebc', value: 200 }).kind).toBe('beyond');
  expect(() => dosed(glass, 0, { kind: 'gravity', value: 1.3 })).toThrow('wished gravity is 1.3; allowed is 1 to 1.14');
});

describe('reaching a wish from the shelf', () => {
  const empty = { ...glass, doses: [] };
  const candidates = [pale, dark].map((sugar) => ({ sugar, added: 'kettle' as const }));

  it('one sugar meets one wish, as long as it is no more than a fifth of the extract and there is enough', () => {
    const found = reach(empty, candidates, { ebc: 45 });
    if (found.kind !== 'ways') throw new Error(found.kind);
    expect(found.ways.map(({ uses }) => uses.map(({ candidate }) => candidate))).toEqual([[1]]);
    expect(ebcFromA430(beer(found.ways[0]?.glass ?? empty).a430PerCm)).toBeCloseTo(45, 9);
    expect(found.unfit).toEqual([{ candidate: 0, why: expect.stringMatching(/EBC at the most|% of the extract/) }]);
    const scarce = reach(empty, [{ sugar: { ...dark, stockKg: 0.05 }, added: 'kettle' }], { ebc: 45 });
    expect(scarce.unfit[0]?.why).toContain('there are 0.050');
  });

  it('two together meet a colour and a share at once', () => {
    const found = reach(empty, candidates, { ebc: 45, extractShare: 0.12 });
    if (found.kind !== 'ways') throw new Error(found.kind);
    const [way] = found.ways;
    expect(way?.uses).toHaveLength(2);
    const { a430PerCm, extractShare } = beer(way?.glass ?? empty);
    expect(ebcFromA430(a430PerCm)).toBeCloseTo(45, 6);
    expect(extractShare).toBeCloseTo(0.12, 9);
    expect(way?.uses.every(({ massKg }) => massKg > 0)).toBe(true);
  });

  it('when no lot does, the sugar that would is aimed at, and a lot of that kind then does', () => {
    const wish = { ebc: 60, extractShare: 0.1 };
    const found = reach(empty, [{ sugar: pale, added: 'kettle' }], wish);
    if (found.kind !== 'aim' || found.aim.ebc === null) throw new Error(found.kind);
    const made = boughtSugar({
      name: 'made',
      solids: 0.98,
      inverted: 1,
      specific430AsIs: 0.98 * specificFromRating(found.aim.ebc, 'tenPercentByWeight'),
    });
    const again = reach(empty, [{ sugar: made, added: 'kettle' }], wish);
    expect(again.kind).toBe('ways');
    if (again.kind === 'ways') expect(again.ways[0]?.uses[0]?.massKg).toBeCloseTo(found.aim.massKg, 9);
  });

  it('an aim has the ranges of what is not known: water in the sugar, and what becomes of colour in the beer', () => {
    const found = reach(empty, [], { ebc: 60, extractShare: 0.1 });
    if (found.kind !== 'aim' || !found.aim.a430Range || found.aim.a430 === null) throw new Error(found.kind);
    const { massKg, massRangeKg, a430, a430Range, ebcRange } = found.aim;
    // Solids of 96 to 99 % about 98: for the same extract 1.0 % less mass to 2.1 % more.
    expect(massRangeKg.low / massKg).toBeCloseTo(0.98 / 0.99, 2);
    expect(massRangeKg.high / massKg).toBeCloseTo(0.98 / 0.96, 2);
    expect(massRangeKg.mid).toBe(massKg);
    // Colour is kept to 95 %, sd 4 % of one, at most 1: of malt's colour too, so that the sugar has to make up for both.
    const sugars = 60 - 12 * (20 / (20 + 1));
    expect(a430Range.high / a430 - 1).toBeGreaterThan(0.03);
    expect(a430Range.high / a430 - 1).toBeLessThan((0.06 * 60) / sugars);
    expect(1 - a430Range.low / a430).toBeGreaterThan(0.03);
    expect(1 - a430Range.low / a430).toBeLessThan((0.06 * 60) / sugars);
    expect(ebcRange?.low).toBeCloseTo(ebcFromA430(a430Range.low), 9);
    expect(reach(empty, [], { extractShare: 0.1 })).toMatchObject({ aim: { a430: null, ebcRange: null } });
  });

  it('a beer that is darker already can never be reached, and an empty wish is refused', () => {
    expect(reach(empty, candidates, { ebc: 5, extractShare: 0.1 })).toMatchObject({
      kind: 'never',
      why: expect.stringContaining('without its colour'),
    });
    expect(() => reach(empty, candidates, {})).toThrow('wish is empty');
  });
});

it('a swap at equal extract keeps the gravity, at equal colour the colour', () => {
  const before = beer(glass);
  const byExtract = swapped(glass, 0, sugarOf('wet', 100, 0.7), 'extract');
  const byColour = swapped(glass, 0, sugarOf('wet', 100, 0.7), 'colour');
  if (byExtract.kind !== 'dosed' || byColour.kind !== 'dosed') throw new Error('not dosed');
  expect(beer(byExtract.glass).originalGravity).toBeCloseTo(before.originalGravity, 12);
  expect(beer(byColour.glass).a430PerCm).toBeCloseTo(before.a430PerCm, 12);
  expect(byColour.massKg.mid).toBeGreaterThan(0.5);
});

it('another size of the same beer is the same beer', () => {
  const double = scaledTo(glass, 40);
  const [small, large] = [beer(glass), beer(double)];
  expect(large).toMatchObject({
    volumeL: expect.closeTo(40, 9),
    originalGravity: expect.closeTo(small.originalGravity, 12),
    a430PerCm: expect.closeTo(small.a430PerCm, 12),
  });
  expect(double.doses[0]?.massKg).toBeGreaterThan(0.9);
});
