/** Still air beside hot things: its properties, and the numbers of free convection that pan and tray have in common. */

export const stefanBoltzmann = 5.670374419e-8;
export const zeroCelsiusK = 273.15;
const gravity = 9.80665;
export const prandtl = 0.7;

/** Air at the film temperature: conductivity W/(m K) and kinematic viscosity m2/s, linear fits to handbook values, 20-120 C (from memory). */
export function air(filmC: number): { conductivity: number; viscosity: number } {
  return { conductivity: 0.0243 + 7e-5 * filmC, viscosity: 1.33e-5 + 1e-7 * filmC };
}

/** @param length that the correlation goes by, m */
export function rayleigh(surfaceC: number, roomC: number, length: number): number {
  const film = (surfaceC + roomC) / 2;
  const { viscosity } = air(film);
  const expansion = 1 / (film + zeroCelsiusK);
  return (gravity * expansion * Math.abs(surfaceC - roomC) * length ** 3 * prandtl) / viscosity ** 2;
}

/**
 * Nusselt number of a level plate that faces up, warmer than the air; length = area over perimeter.
 * Source: McAdams 1954, 0.54 Ra^1/4 (1e4 to 1e7), 0.15 Ra^1/3 above.
 */
export function nusseltFacingUp(ra: number): number {
  return ra < 1e7 ? 0.54 * ra ** 0.25 : 0.15 * ra ** (1 / 3);
}
