import { greatest } from 'd3-array';
import { expect, test } from 'vitest';
import { referenceTable } from '../../../test/referenceTable.ts';
import { syrupDensityKgPerM3 } from './density.ts';
import { liquidDensityKgPerM3 } from './water.ts';

interface Row {
  percent: number;
  temperatureC: number;
  off: number;
}

function worst(title: string, rows: Row[]): number {
  const row = greatest(rows, ({ off }) => Math.abs(off));
  console.log(`${title}, ${rows.length} rows, worst (kg/m3):`, row);
  return Math.abs(row?.off ?? Number.NaN);
}

test('density follows the ICUMSA tables at 20 C within 0.01 kg/m3 (they print two decimals)', () => {
  const rows = referenceTable('sucrose-density-20C').map((row) => {
    const percent = Number(row['mass_percent_sucrose']);
    const off = syrupDensityKgPerM3(percent / 100, 20) - Number(row['density_kg_m3_20C_vacuum']);
    return { percent, temperatureC: 20, off };
  });
  expect(worst('ICUMSA at 20 C', rows)).toBeLessThan(0.01);
});

test('density follows the ICUMSA tables from 10 to 100 C within 0.06 kg/m3 (they print one decimal)', () => {
  const rows = referenceTable('sucrose-density-temperature').flatMap(({ mass_percent: percent, ...byTemperature }) =>
    Object.entries(byTemperature).map(([column, printed]) => {
      const temperatureC = Number(column.match(/\d+/)?.[0]);
      const off = syrupDensityKgPerM3(Number(percent) / 100, temperatureC) - Number(printed);
      return { percent: Number(percent), temperatureC, off };
    }),
  );
  expect(worst('ICUMSA by temperature', rows)).toBeLessThan(0.06);
});

test('density follows the older Plato basis (NBS C440) within 0.05 %, as far as the two tables agree', () => {
  const water = syrupDensityKgPerM3(0, 20);
  const rows = referenceTable('sucrose-density-plato').map((row) => {
    const percent = Number(row['mass_percent_sucrose']);
    const off = syrupDensityKgPerM3(percent / 100, 20) - water * Number(row['relative_density']);
    return { percent, temperatureC: 20, off };
  });
  expect(worst('Plato at 20 C', rows)).toBeLessThan(0.6);
});

test('density without sugar is that of water on its saturation line within 0.01 %: the pressure of 1 atm adds 0.005 %', () => {
  for (const t of [5, 20, 50, 80, 100]) {
    expect(Math.abs(syrupDensityKgPerM3(0, t) / liquidDensityKgPerM3(t) - 1), `${t} C`).toBeLessThan(1e-4);
  }
});

test('density is continuous at 100 C and falls with temperature, more slowly for sugar than for water', () => {
  for (const w of [0.5, 0.8, 0.97, 1]) {
    expect(syrupDensityKgPerM3(w, 100 + 1e-6)).toBeCloseTo(syrupDensityKgPerM3(w, 100), 3);
    expect(syrupDensityKgPerM3(w, 150)).toBeLessThan(syrupDensityKgPerM3(w, 100));
  }
  const lost = (w: number) => 1 - syrupDensityKgPerM3(w, 180) / syrupDensityKgPerM3(w, 100);
  expect(lost(0.97)).toBeLessThan(lost(0.5));
});

test('density refuses what lies outside its range', () => {
  expect(() => syrupDensityKgPerM3(1.01, 20)).toThrow(RangeError);
  expect(() => syrupDensityKgPerM3(0.5, -1)).toThrow('syrup temperature (C) is -1; allowed is 0 to 200');
});
