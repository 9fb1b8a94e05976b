import fc from 'fast-check';
import { expect, it } from 'vitest';
import { evenly } from '../../../test/evenly.ts';
import { referenceTable } from '../../../test/referenceTable.ts';
import { atmospherePa, carbonDioxideGPerL, carbonDioxidePa, gramsPerLitreOfVolume } from './carbonDioxide.ts';

const table = referenceTable('carbon-dioxide-beer').map(({ temperature_c, grams_per_litre, volumes_chart }) => ({
  temperatureC: Number(temperature_c),
  printed: Number(grams_per_litre),
  chart: Number(volumes_chart),
}));
const at = (temperatureC: number) => carbonDioxideGPerL(temperatureC, atmospherePa);

it('what beer holds follows the published table from -1 to 25 C within 0.06 g/L; it is printed to 0.1', () => {
  const errors = table.map(({ temperatureC, printed }) => ({
    temperatureC,
    off: Math.abs(at(temperatureC) - printed),
  }));
  const worst = errors.reduce((a, b) => (b.off > a.off ? b : a));
  console.info(`carbon dioxide: worst ${worst.off.toFixed(3)} g/L at ${worst.temperatureC} C`);
  expect(errors.length).toBeGreaterThan(25);
  expect(worst.off).toBeLessThanOrEqual(0.06);
});

it("and deLange's fit of the ASBC chart, an independent source, within 0.03 volumes", () => {
  const errors = table.map(({ temperatureC, chart }) => Math.abs(at(temperatureC) / gramsPerLitreOfVolume - chart));
  console.info(`carbon dioxide: worst ${Math.max(...errors).toFixed(3)} vol against the chart`);
  expect(Math.max(...errors)).toBeLessThanOrEqual(0.03);
});

it('pressure is the inverse, at every temperature', () => {
  fc.assert(
    fc.property(evenly(-1, 40), evenly(0, 12), (c, held) => {
      return Math.abs(carbonDioxideGPerL(c, carbonDioxidePa(c, held)) - held) < 1e-9;
    }),
  );
});

it('is refused where nobody measured', () => {
  expect(() => carbonDioxideGPerL(60, atmospherePa)).toThrow('beer temperature (C) is 60; allowed is -1 to 40');
});
