import { expect, test } from 'vitest';
import { referenceTable } from '../../../test/referenceTable.ts';
import { inversionHalfLifeMin, inversionPerS } from './inversion.ts';
import { valuesOf } from './parameter.ts';
import { reactionParameters } from './parameters.ts';

const acidAlone = { ...valuesOf(reactionParameters), scissionRate150: 0 };

test('half-lives in dilute acid follow the published rate line carried to 100-160 C within 2 %', () => {
  let worst = { off: 0, row: '' };
  for (const { T_C: t, pH_at_temperature: ph, halflife_min_dilute: minutes } of referenceTable('inversion-half-life')) {
    const off = inversionHalfLifeMin(acidAlone, Number(ph), Number(t), 1) / Number(minutes) - 1;
    if (Math.abs(off) > Math.abs(worst.off)) worst = { off, row: `${t} C, pH ${ph}` };
  }
  console.log(`inversion half-life, worst row: ${worst.row}, ${(100 * worst.off).toFixed(2)} %`);
  expect(Math.abs(worst.off)).toBeLessThan(0.02);
});

/** Vukov 1965, Int. Sugar J. 67:172 (constants seen in a transcription): log10 k(1/min) = 16.91 + log10(water g/mL) - 5670/T - pH. */
const vukovPerS = (ph: number, t: number, water: number) => (water * 10 ** (16.91 - 5670 / (t + 273.15) - ph)) / 60;

test('an independent equation, Vukov 1965, gives the same rate in dilute solution within 10 % from 25 to 155 C', () => {
  for (const t of [25, 60, 90, 110, 130, 155]) {
    expect(Math.abs(Math.log(inversionPerS(acidAlone, 5, t, 1) / vukovPerS(5, t, 1)))).toBeLessThan(0.1);
  }
});

test('with water order 1 the law is Vukov’s in thick syrup too', () => {
  const first = { ...acidAlone, waterOrder: 1 };
  expect(Math.abs(Math.log(inversionPerS(first, 5, 130, 0.14) / vukovPerS(5, 130, 0.14)))).toBeLessThan(0.05);
});

test('at pH 5.5 and 130 C half an hour inverts about 6 % in dilute solution and 1 to 3 % in syrup of 10 % water', () => {
  const after30 = (water: number) => 1 - Math.exp(-inversionPerS(acidAlone, 5.5, 130, water) * 1800);
  expect(after30(1)).toBeGreaterThan(0.05);
  expect(after30(1)).toBeLessThan(0.08);
  expect(after30(0.14)).toBeGreaterThan(0.01);
  expect(after30(0.14)).toBeLessThan(0.03);
});
