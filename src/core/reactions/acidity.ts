/**
 * Hot pH of the syrup by charge balance: strong cations and hydrogen against hydroxide, acids formed, added citric acid,
 * ionised sugar and the malt extract's buffer.
 */
import { liquidDensityKgPerM3 } from '../matter/water.ts';

/**
 * Ion product of liquid water at saturation, as -log10 of molal activities.
 *
 * @param temperatureC 0 to 200 C
 * Source: IAPWS R11-07, eqs 3-5 (constants from memory; checked against the release's table and a reference library).
 */
export function waterPk(temperatureC: number): number {
  const kelvin = temperatureC + 273.15;
  const density = liquidDensityKgPerM3(temperatureC) / 1000;
  const q = density * Math.exp(-0.864671 + 8659.19 / kelvin - (22786.2 / kelvin ** 2) * density ** (2 / 3));
  const bound = (q / (q + 1)) * density * (0.642044 - 56.8534 / kelvin - 0.375754 * density);
  const gas = 0.61415 + 48251.3 / kelvin - 67709.3 / kelvin ** 2 + 1.01021e7 / kelvin ** 3;
  return -12 * (Math.log10(1 + q) - bound) + gas + 2 * Math.log10(0.018015268);
}

/** Ionisation enthalpy of hexose hydroxyls, kJ/mol (from memory). */
export const sugarIonisationKJ = 33;

/** pK of hexose hydroxyls: its value at 120 C carried by the ionisation enthalpy. */
export function sugarPk(pkAt120C: number, temperatureC: number): number {
  const perKelvin = (sugarIonisationKJ * 1000) / (8.314462618 * Math.LN10);
  return pkAt120C + perKelvin * (1 / (temperatureC + 273.15) - 1 / 393.15);
}

/** Citric acid in syrup: pK 3.13, 4.76, 6.40 at 25 C (from memory), 0.5 higher in hot low-water syrup (assumed). */
const citricK = [3.63, 5.26, 6.9].map((pk) => 10 ** -pk) as [number, number, number];

export interface Charges {
  /** Strong cations less strong anions, eq: alkali released and water alkalinity. */
  base: number;
  /** Acids formed by the sugars, eq. */
  acid: number;
  /** Citric acid added, mol. */
  citric: number;
  /** Ionisable sugar: hexoses and half the sucrose, mol. */
  sugar: number;
  waterKg: number;
  /** Malt extract's buffering, eq per pH unit. */
  buffer: number;
  /** pH at which the malt extract is without charge. */
  bufferPh: number;
  waterK: number;
  acidK: number;
  sugarK: number;
}

/**
 * ln of the hydrogen-ion activity that balances the charges.
 *
 * @param start a guess of the answer, such as the last one
 * @returns natural logarithm of the activity on the molal scale; -ln(10) times the pH
 */
export function lnHydrogenActivity(c: Readonly<Charges>, start: number): number {
  let ln = Number.isFinite(start) ? start : -5.5 * Math.LN10;
  for (let i = 0; i < 60; i++) {
    const a = Math.exp(ln);
    const acid = c.acidK / (c.acidK + a);
    const sugar = c.sugarK / (c.sugarK + a);
    let excess =
      c.base +
      c.waterKg * (a - c.waterK / a) -
      c.acid * acid -
      c.sugar * sugar +
      c.buffer * (ln / Math.LN10 + c.bufferPh);
    let slope =
      c.waterKg * (a + c.waterK / a) +
      c.acid * acid * (1 - acid) +
      c.sugar * sugar * (1 - sugar) +
      c.buffer / Math.LN10;
    if (c.citric > 0) {
      const [charge, chargeSlope] = citrateCharge(a);
      excess -= c.citric * charge;
      slope += c.citric * chargeSlope;
    }
    const move = Math.max(-1.5, Math.min(1.5, excess / slope));
    ln -= move;
    // Newton's error is less than the square of its last move.
    if (Math.abs(move) < 5e-4) return ln;
  }
  return ln;
}

/** Mean negative charge of citric acid at hydrogen activity `a`, and minus its derivative with ln a. */
function citrateCharge(a: number): [number, number] {
  const [k1, k2, k3] = citricK;
  const one = k1 / a;
  const two = (one * k2) / a;
  const three = (two * k3) / a;
  const sum = 1 + one + two + three;
  const charge = (one + 2 * two + 3 * three) / sum;
  return [charge, (one + 4 * two + 9 * three) / sum - charge * charge];
}
