/**
 * A cast slab that cools: conduction through its thickness, dT/dt = (k T')' / (density x heat capacity), by finite volumes and
 * implicit Euler steps; still air on top, and below what it was cast on. Its edges are left out of account.
 */
import { conductivityWPerMK } from '../matter/conductivity.ts';
import { syrupDensityKgPerM3 } from '../matter/density.ts';
import { syrupHeatCapacityJPerKgK } from '../matter/heatCapacity.ts';
import { requireRange } from '../matter/range.ts';
import { plateWPerM2K } from './plate.ts';

/** What it lies on: a board or folded cloth that keeps heat in, a metal tray with air below, or foil on a wire rack. */
export type Base = 'insulated' | 'tray' | 'rack';

export interface SlabCase {
  readonly massKg: number;
  /** Mass fraction of dry solids, 0.8 to 1. */
  readonly solids: number;
  /** Glass transition of the candy, C: below it holds less heat. */
  readonly glassC: number;
  readonly temperatureC: number;
  /** Width and length of the tray, m. */
  readonly trayM: readonly [number, number];
  readonly base: Base;
}

export interface Slab {
  readonly thicknessM: number;
  /** Temperature of its upper face, and of its hottest part, C. */
  readonly surfaceC: number;
  readonly hottestC: number;
  /** Cools in air of a temperature by one time step. */
  step(airC: number): void;
}

/** Length of a time step, s, and number of layers: half of either, or twice, moves the times by less than 1 % (measured). */
export const stepS = 10;
const layers = 20;

/**
 * Emissivity of candy, and of the underside of a used metal tray or foil (from memory). Without metal between, radiating from below as
 * candy does, a slab on a rack would be hand-warm in three quarters of the time.
 */
const candyEmissivity = 0.93;
const metalEmissivity = 0.2;
/** A tray of 1 mm of aluminium, J/(m2 K): 2.7 kg/m2 of 900 J/(kg K) (from memory). */
const trayJPerM2K = 2430;
/** By how much a sugar glass holds less heat than the melt, J/(kg K): 700 to 780 (from memory). */
const glassStepJPerKgK = 740;
/** The step is spread over this width, K (assumed). */
const glassWidthK = 6;

/** @throws RangeError naming a number outside its range */
function requireSlab({ massKg, solids, temperatureC, trayM }: SlabCase): void {
  requireRange('poured mass (kg)', massKg, 0.01, 10);
  requireRange('solids (mass fraction)', solids, 0.8, 1);
  requireRange('temperature at the pour (C)', temperatureC, 20, 200);
  for (const side of trayM) requireRange('side of the tray (m)', side, 0.05, 1);
}

/**
 * @param slab what was poured, as hot all through
 * @throws RangeError naming a number outside its range
 * Heat capacity, conductivity and density: `core/matter`, each with its source; extrapolated above 100 C.
 */
export function createSlab(slab: SlabCase): Slab {
  requireSlab(slab);
  const { massKg, solids, glassC, temperatureC, trayM, base } = slab;
  const [width, length] = trayM;
  const density = syrupDensityKgPerM3(solids, temperatureC);
  const thicknessM = massKg / (density * width * length);
  const lengthM = (width * length) / (2 * (width + length));
  const candy = { lengthM, emissivity: candyEmissivity };
  const metal = { lengthM, emissivity: metalEmissivity };
  const dx = thicknessM / layers;

  // A tray is one more node below the layers, taken to be as hot as what was poured: errs on the slow side.
  const nodes = layers + (base === 'tray' ? 1 : 0);
  const t = new Float64Array(nodes).fill(temperatureC);
  const system = createTridiagonal(nodes);
  let surfaceC = temperatureC;

  const conductivity = (c: number): number => conductivityWPerMK(solids, Math.max(0, c));
  function capacity(c: number): number {
    const glassy = 1 / (1 + Math.exp((c - glassC) / glassWidthK));
    return syrupHeatCapacityJPerKgK(solids, Math.max(0, c)) - solids * glassStepJPerKgK * glassy;
  }
  /** From the middle of an outer layer through its face to the air, W/(m2 K). */
  const through = (film: number, layerC: number): number => 1 / (1 / film + dx / (2 * conductivity(layerC)));

  return {
    thicknessM,
    get surfaceC() {
      return surfaceC;
    },
    get hottestC() {
      return t.subarray(0, layers).reduce((most, c) => Math.max(most, c), surfaceC);
    },
    step(airC) {
      system.clear();
      for (let i = 0; i < layers; i++) system.hold(i, (density * capacity(t[i]) * dx) / stepS, t[i]);
      for (let i = 1; i < layers; i++) system.join(i - 1, (conductivity(t[i - 1]) + conductivity(t[i])) / (2 * dx));
      const film = plateWPerM2K(candy, 'top', surfaceC, airC);
      const upward = through(film, t[0]);
      system.hold(0, upward, airC);
      if (base === 'tray') {
        system.hold(layers, trayJPerM2K / stepS, t[layers]);
        system.join(layers - 1, (2 * conductivity(t[layers - 1])) / dx);
        system.hold(layers, plateWPerM2K(metal, 'underside', t[layers], airC), airC);
      } else if (base === 'rack') {
        const below = plateWPerM2K(metal, 'underside', t[layers - 1], airC);
        system.hold(layers - 1, through(below, t[layers - 1]), airC);
      }
      system.solve(t);
      surfaceC = airC + ((t[0] - airC) * upward) / film;
    },
  };
}

/** Equations of a chain of nodes: each held to temperatures, and joined to the next, by conductances; solved by elimination (Thomas). */
function createTridiagonal(nodes: number) {
  const diagonal = new Float64Array(nodes);
  const beside = new Float64Array(nodes);
  const right = new Float64Array(nodes);
  return {
    clear() {
      for (const row of [diagonal, beside, right]) row.fill(0);
    },
    hold(node: number, conductance: number, toC: number) {
      diagonal[node] += conductance;
      right[node] += conductance * toC;
    },
    /** Joins a node to the next. */
    join(node: number, conductance: number) {
      diagonal[node] += conductance;
      diagonal[node + 1] += conductance;
      beside[node] = conductance;
    },
    solve(into: Float64Array) {
      for (let i = 1; i < nodes; i++) {
        const share = beside[i - 1] / diagonal[i - 1];
        diagonal[i] -= share * beside[i - 1];
        right[i] += share * right[i - 1];
      }
      for (let i = nodes - 1; i >= 0; i--) {
        const next = i + 1 < nodes ? beside[i] * into[i + 1] : 0;
        into[i] = (right[i] + next) / diagonal[i];
      }
    },
  };
}
