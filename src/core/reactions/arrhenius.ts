/** Arrhenius' law about a reference temperature. */

const gasConstant = 8.314462618;
const zeroCelsiusK = 273.15;

/** Rate constant at `temperatureC` from its value at `referenceC` and its activation energy in kJ/mol, in the units of `atReference`. */
export function arrhenius(atReference: number, energyKJ: number, referenceC: number, temperatureC: number): number {
  const inverse = 1 / (referenceC + zeroCelsiusK) - 1 / (temperatureC + zeroCelsiusK);
  return atReference * Math.exp(((energyKJ * 1000) / gasConstant) * inverse);
}

/** Derivative of the same with temperature, per K. */
export function arrheniusSlope(
  atReference: number,
  energyKJ: number,
  referenceC: number,
  temperatureC: number,
): number {
  const kelvin = temperatureC + zeroCelsiusK;
  return (arrhenius(atReference, energyKJ, referenceC, temperatureC) * energyKJ * 1000) / (gasConstant * kelvin ** 2);
}
