/**
 * Specific gravity (apparent, 20/20 C) and degrees Plato (per cent of extract by weight, as sucrose).
 *
 * Two published cubics, each in its own range: the ASBC polynomial for worts, and the polynomial through the sucrose table
 * of NBS Circular C440 above, to 40 P; thicker syrups are a matter of density (`matter/`). They change hands where they cross, near 1.0788, so that there is no step.
 */

type Cubic = readonly [number, number, number, number];

/** Through the ASBC table, gravities 1.000 to 1.083; rms 0.0006 P, worst 0.003 at 1.000 (seen quoted). */
const asbcCubic: Cubic = [-616.868, 1111.14, -630.272, 135.997];
/** Through NBS C440 (1942), 0 to 40 P; rms 0.0009 P (seen quoted). */
const nbsCubic: Cubic = [-669.56218, 1262.7794, -775.68212, 182.46007];

const lowestGravity = 0.985;
const highestGravity = 1.17874;
const crossingGravity = crossing(1.07, 1.085);

/**
 * Extract in degrees Plato of a wort or sugar solution.
 *
 * @param gravity 20/20 C, 0.985 to 1.17874. Below 1 (beer after a strong fermentation) the ASBC cubic is continued: that
 *   gives the negative apparent extract which attenuation formulas expect, and no table checks it.
 * @returns P, -3.9 to 40; within 0.004 of the published tables
 * @throws RangeError outside the range
 */
export function platoFromGravity(gravity: number): number {
  if (!(gravity >= lowestGravity && gravity <= highestGravity)) {
    throw new RangeError(`specific gravity ${gravity} is not within ${lowestGravity} to ${highestGravity}`);
  }
  return valueOfCubic(gravity < crossingGravity ? asbcCubic : nbsCubic, gravity);
}

/** Inverse of `platoFromGravity`, to 1e-12. */
export function gravityFromPlato(plato: number): number {
  const lowest = platoFromGravity(lowestGravity);
  const highest = platoFromGravity(highestGravity);
  if (!(plato >= lowest && plato <= highest)) {
    throw new RangeError(`extract ${plato} P is not within ${lowest.toFixed(2)} to ${highest.toFixed(2)}`);
  }
  const cubic = plato < valueOfCubic(asbcCubic, crossingGravity) ? asbcCubic : nbsCubic;
  let gravity = 1 + plato / (258.6 - (227.1 / 258.2) * plato);
  for (let pass = 0; pass < 4; pass++) gravity -= (valueOfCubic(cubic, gravity) - plato) / slopeOfCubic(cubic, gravity);
  return Math.min(highestGravity, Math.max(lowestGravity, gravity));
}

function valueOfCubic([c0, c1, c2, c3]: Cubic, gravity: number): number {
  return c0 + gravity * (c1 + gravity * (c2 + gravity * c3));
}

function slopeOfCubic([, c1, c2, c3]: Cubic, gravity: number): number {
  return c1 + gravity * (2 * c2 + gravity * 3 * c3);
}

/** Gravity between two others at which the cubics agree, by bisection. */
function crossing(below: number, above: number): number {
  const lead = (gravity: number) => valueOfCubic(nbsCubic, gravity) - valueOfCubic(asbcCubic, gravity);
  let [low, high] = [below, above];
  for (let pass = 0; pass < 50; pass++) {
    const middle = (low + high) / 2;
    if (lead(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
