import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../../test/evenly.ts';
import { referenceTable } from '../../../test/referenceTable.ts';
import { specificFromRating } from '../colour/rating.ts';
import { a430FromEbc } from '../colour/scales.ts';
import type { Range } from '../twin/range.ts';
import { boughtSugar, tableSugar } from './boughtSugar.ts';
import { brewed } from './brewed.ts';
import { drawnGlass } from './drawnGlass.ts';
import { givenBy, numbersOf } from './given.ts';
import type { Glass } from './glass.ts';
import { gravityFromPlato } from './plato.ts';
import { settled } from './settled.ts';
import type { Sugar } from './sugar.ts';
import { central, certain } from './uncertain.ts';

const rest = {
  volumeL: 20,
  gravity: 1.06,
  a430PerCm: a430FromEbc(12),
  attenuation: 0.75,
  sodiumMgPerL: 28,
  calciumMgPerL: 50,
};
const dark = boughtSugar({
  name: 'dark',
  solids: 0.98,
  specific430AsIs: 0.03,
  inverted: 0.9,
  fermentable: certain(0.9),
});
const glassOf = (sugar: Sugar, massKg: number, change: Partial<Glass> = {}): Glass => ({
  rest,
  doses: [{ sugar, massKg, added: 'kettle' }],
  kettleLossL: 0,
  pathCm: 5,
  ...change,
});
const middle = (glass: Glass) => brewed(settled(glass, central));
const water = { ...rest, gravity: 1, a430PerCm: 0 };

describe('a beer of sugar and water alone', () => {
  it('100 g of sucrose made up to a litre is 1.03857 (ICUMSA) within 0.0001', () => {
    // 100 g of sucrose take up the room of 0.0615 L.
    const { originalGravity, volumeL } = middle(
      glassOf({ ...tableSugar, solids: certain(1) }, 0.1, { rest: { ...water, volumeL: 0.9384 } }),
    );
    expect(volumeL).toBeCloseTo(1, 3);
    expect(Math.abs(originalGravity - 1.03857)).toBeLessThan(1e-4);
  });

  it('of invert sugar at 10 P, fermented out, ends at -2.21 P; of sucrose it gives 5.26 % more alcohol', () => {
    const invert: Sugar = { ...tableSugar, sucrose: certain(0), solids: certain(1) };
    const massKg = (0.1 * 20 * 0.998203) / 0.9;
    const beer = middle(glassOf(invert, massKg, { rest: water }));
    expect(beer.originalPlato).toBeCloseTo(10, 4);
    expect(beer.apparentPlato).toBeCloseTo(-2.207, 2);
    expect(beer.finalGravity).toBeCloseTo(0.9915, 3);
    const sucrose = middle(glassOf({ ...invert, sucrose: certain(1) }, massKg, { rest: water }));
    expect(sucrose.inversionGainPlato).toBeCloseTo(0.5263, 3);
    // By weight 5.26 % more; the beer that holds it is a little lighter.
    expect(sucrose.abv / beer.abv).toBeCloseTo(1.0526, 2);
  });
});

it('without sugar the beer is its rest: OG 1.060 at 82.62 % apparent is FG 1.010, 6.68 % by volume (Balling, worked)', () => {
  const { originalGravity, finalGravity, abv } = middle({
    ...glassOf(dark, 0),
    rest: { ...rest, attenuation: 1 - 2.561 / 14.741 },
  });
  expect(originalGravity).toBeCloseTo(1.06, 9);
  expect(finalGravity).toBeCloseTo(1.01, 4);
  expect(Math.abs(abv - 6.68)).toBeLessThan(0.01);
});

it('750 g at 0.060 L/(g cm) in 20 L of beer of 24 EBC make 80.25 EBC (Beer-Lambert, worked), nothing lost', () => {
  const sugar = boughtSugar({ name: 's', solids: 1, specific430AsIs: 0.06, inverted: 1 });
  const asked = settled(glassOf(sugar, 0.75), central);
  const { volumeL } = brewed(asked);
  const a430PerCm = (a430FromEbc(24) * 20) / 20;
  // The worked example fills up to 20 L in all; here 20 L grow by what the sugar adds.
  const beer = brewed({
    ...asked,
    colourKept: 1,
    rest: { ...rest, volumeL: 20 * (20 / volumeL), a430PerCm: a430PerCm * (volumeL / 20) },
  });
  expect(Math.abs(25 * beer.a430PerCm * (beer.volumeL / 20) - 80.25)).toBeLessThan(0.1);
});

it('5 g of lye for each kg at 40 g/L add 115 mg/L of sodium (molar masses)', () => {
  const lye: Sugar = { ...dark, minerals: { sodiumGPerKg: certain(5 * 0.57478), calciumGPerKg: certain(0) } };
  const { volumeL } = middle(glassOf(lye, 0.8));
  expect((middle(glassOf(lye, 0.8)).sodiumMgPerL * volumeL) / 20).toBeCloseTo(115, 0);
});

it('gravity at pitching leaves out what goes into the fermenter; the kettle keeps its share of what went in before', () => {
  const late = middle({ ...glassOf(dark, 1), doses: [{ sugar: dark, massKg: 1, added: 'fermenter' }], kettleLossL: 2 });
  expect(late.pitchingGravity).toBeCloseTo(1.06, 9);
  const kettle = middle(glassOf(dark, 1, { kettleLossL: 2 }));
  expect(kettle.pitchingGravity).toBe(kettle.originalGravity);
  expect(kettle.originalGravity).toBeCloseTo(middle(glassOf(dark, 20 / 22)).originalGravity, 12);
});

describe('the drawn glass', () => {
  const rows = referenceTable('colour-transmitted');
  const shown = ({ sR, sG, sB }: Record<string, string>) => [sR, sG, sB].map(Number);

  // Table: independent implementation from the CIE tables in 1 nm; one step of 255 for our 5 nm.
  it('looks as the table says of average beer, and of pigment of hue index 7 in water', () => {
    let worst = 0;
    let checked = 0;
    for (const row of rows) {
      const [path, a430PerCm] = [Number(row['path_cm']), Number(row['A430_1cm'])];
      const caramel = /7/.test(row['spectrum'] ?? '');
      if (!caramel && !/average/.test(row['spectrum'] ?? '')) continue;
      const glass = caramel
        ? glassOf({ ...dark, hueIndex: 7 }, 1, { rest: water, pathCm: path })
        : glassOf(dark, 0, { rest: { ...rest, a430PerCm }, pathCm: path });
      const { r, g, b } = drawnGlass(glass, certain(a430PerCm)).withSugars.mid;
      worst = Math.max(worst, ...shown(row).map((each, at) => Math.abs(each - ([r, g, b][at] ?? Number.NaN))));
      checked++;
    }
    console.info(`drawn glass: worst ${worst} of 255 in ${checked} colours`);
    expect(checked).toBeGreaterThan(50);
    expect(worst).toBeLessThanOrEqual(1);
  });

  it('without a sugar looks the same with it, and darker with more', () => {
    expect(givenBy(glassOf(dark, 0)).drawn.difference).toBeCloseTo(0, 9);
    const [some, more] = [0.2, 0.6].map((kg) => givenBy(glassOf(dark, kg)).drawn);
    expect(more?.difference).toBeGreaterThan(some?.difference ?? Number.NaN);
  });
});

it('the empirical colour meets the computed one without sugar, and falls behind it as the dose grows', () => {
  const none = givenBy(glassOf(dark, 0));
  expect(none.empirical.srm.mid).toBeCloseTo(none.srm.mid, 9);
  expect(none.empirical.partsFromGPerL).toBeNull();
  const much = givenBy(glassOf(dark, 0.8));
  expect(much.empirical.srm.mid).toBeLessThan(much.srm.mid);
  expect(much.empirical.partsFromGPerL).toBeGreaterThan(0);
  // A pound of 40 degrees Lovibond in a gallon of water: MCU 40, 18.74 SRM (worked); the volume grows by the sugar here.
  const printed = boughtSugar({
    name: '40 L',
    solids: 1,
    specific430AsIs: (1.3546 * 40 - 0.76) / 12.7 / 119.826,
    inverted: 1,
  });
  const pound = givenBy(glassOf(printed, 0.45359, { rest: { ...water, volumeL: 3.785412 * 0.9264 } }));
  expect(pound.beer.volumeL.mid).toBeCloseTo(3.785, 2);
  expect(Math.abs(pound.empirical.srm.mid - 18.74)).toBeLessThan(0.03);
});

const dose = evenly(0, 4);
const anySugar = fc
  .record({
    ebc: evenly(1, 700),
    solids: evenly(0.6, 1),
    inverted: evenly(0, 1),
  })
  .map(({ ebc, solids, inverted }) =>
    boughtSugar({ name: 'any', solids, inverted, specific430AsIs: specificFromRating(ebc, 'tenPercentByWeight') }),
  );

it('more sugar is more extract, more alcohol and more colour where it is darker than the beer; marks in order, nothing negative', () => {
  fc.assert(
    fc.property(anySugar, dose, evenly(1e-3, 1), (sugar, massKg, further) => {
      const less = numbersOf(glassOf(sugar, massKg));
      const more = numbersOf(glassOf(sugar, massKg + further));
      const marks: (keyof Range)[] = ['low', 'mid', 'high'];
      const grows = (name: 'originalGravity' | 'extractShare' | 'abv' | 'volumeL' | 'sugarsA430PerCm') =>
        marks.every((mark) => more[name][mark] > less[name][mark]);
      const sound = Object.entries(more).every(
        ([name, { low, mid, high }]) => low <= mid && mid <= high && (low >= 0 || name === 'apparentPlato'),
      );
      return sound && (['originalGravity', 'extractShare', 'abv', 'volumeL', 'sugarsA430PerCm'] as const).every(grows);
    }),
    { numRuns: 40 },
  );
});

it('mass is kept: extract of the beer is that of its parts', () => {
  fc.assert(
    fc.property(anySugar, dose, (sugar, massKg) => {
      const glass = glassOf(sugar, massKg);
      const { originalPlato, extractShare, volumeL } = middle(glass);
      const [before, after] = [middle(glassOf(sugar, 0)), gravityFromPlato(originalPlato)];
      const kg = (volume: number, gravity: number, plato: number) =>
        volume * (gravity * 0.997003 + 0.0012) * (plato / 100);
      const all = kg(volumeL, after, originalPlato);
      const parts = kg(20, 1.06, before.originalPlato) + massKg * sugar.solids.mid;
      return Math.abs(all - parts) < 1e-9 && Math.abs(extractShare * all - massKg * sugar.solids.mid) < 1e-9;
    }),
  );
});

it('what is outside the limits is refused by its name', () => {
  expect(() => givenBy(glassOf(dark, -1))).toThrow('mass of dark (kg) is -1; allowed is 0 to 2000');
  expect(() => givenBy(glassOf(dark, 1, { rest: { ...rest, volumeL: 0 } }))).toThrow(
    'volumeL is 0; allowed is 0.5 to 5000',
  );
  expect(() => givenBy(glassOf({ ...dark, solids: certain(0.2) }, 1))).toThrow('solids of dark is 0.2');
});
