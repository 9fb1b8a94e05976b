/** A volume of wort or sugar solution in mass and extract, at 20 C. Density from apparent gravity: weights in air of 1.2 kg/m3. */
import { syrupDensityKgPerM3 } from '../matter/density.ts';
import { bracketedRoot } from '../matter/root.ts';
import { platoFromGravity } from './plato.ts';

/** Density of water and of air at 20 C, kg/L: Kell 1975; air by convention of weighing. */
const waterKgPerL = 0.998203;
const airKgPerL = 0.0012;

export interface Wort {
  readonly massKg: number;
  readonly extractKg: number;
}

/** Density at 20 C, kg/L in vacuum, from specific gravity 20/20 C as a hydrometer shows it. */
export function wortKgPerL(gravity: number): number {
  return gravity * (waterKgPerL - airKgPerL) + airKgPerL;
}

/** @param gravity 0.985 to 1.17874; water (1.000) has no extract */
export function wortOf(volumeL: number, gravity: number): Wort {
  const massKg = volumeL * wortKgPerL(gravity);
  return { massKg, extractKg: massKg * (Math.max(0, platoFromGravity(gravity)) / 100) };
}

/** Specific gravity 20/20 C, apparent, of `gramsPerLitre` of sucrose made up to a litre: ICUMSA densities, 0 to 1000 g/L. */
export function gravityOfSucrose(gramsPerLitre: number): number {
  const strength = (share: number) => share * syrupDensityKgPerM3(share, 20) - gramsPerLitre;
  const share = gramsPerLitre === 0 ? 0 : bracketedRoot(strength, 0, 0.75, 1e-12);
  return (syrupDensityKgPerM3(share, 20) / 1000 - airKgPerL) / (waterKgPerL - airKgPerL);
}
