/**
 * Pictures of a dilution in a glass beside white, rendered from a known spectrum: a camera with curves of its own and the colour matrix
 * that a maker would fit for them, light that falls off, photon noise, a tone curve, and JPEG's blocks. Not the family of cameras that the
 * measurement draws from: bells here are lopsided and have a second hump, and the matrix is fitted to what eyes see (CIE 1931).
 */
import { illuminantC, illuminantD65, observer2Degree, wavelengthsNm } from '../../src/core/colour/cie.ts';
import type { Picture, Region } from '../../src/core/colour/photo/patch.ts';
import { pigmentShape } from '../../src/core/colour/spectrum.ts';
import { encoded, linearRgb } from '../../src/core/colour/srgb.ts';

export interface SceneCamera {
  readonly curves: readonly Float64Array[];
  readonly light: readonly number[];
  /** From white-balanced channels to linear sRGB. */
  readonly matrix: readonly (readonly number[])[];
  readonly contrast: number;
  readonly fallOff: number;
  readonly noise: number;
  readonly quality: number;
}

export interface Scene {
  readonly a430Path: number;
  readonly hueIndex: number;
  /** Brightness of the white, 0 to 1. */
  readonly exposure: number;
}

export const size = { width: 192, height: 96 } as const;
export const regions = {
  sample: { left: 76, top: 24, width: 40, height: 48 },
  whites: [
    { left: 16, top: 24, width: 40, height: 48 },
    { left: 136, top: 24, width: 40, height: 48 },
  ],
} as const satisfies { sample: Region; whites: readonly Region[] };

const grid = wavelengthsNm;

/** Light from windows (D65, C, or between) or a white diode. */
export function sceneCamera(normal: () => number, lamp: boolean): SceneCamera {
  const between = Math.min(1, Math.max(0, 0.5 + 0.4 * normal()));
  const light = lamp
    ? grid.map((nm) => (0.5 + 0.1 * normal()) * hump(nm, 450, 8, 12) + hump(nm, 570 + 8 * normal(), 45, 70))
    : grid.map((_, at) => between * (illuminantD65[at] ?? 0) + (1 - between) * (illuminantC[at] ?? 0));
  const curves = [
    humps([600 + 5 * normal(), 28, 34], [540, 20, 12], 0.08),
    humps([532 + 5 * normal(), 36, 40], [610, 20, 20], 0.06),
    humps([460 + 5 * normal(), 24, 32], [540, 25, 25], 0.05),
  ];
  return {
    curves,
    light,
    matrix: fittedMatrix(curves, light, normal),
    contrast: Math.exp(0.05 * normal()),
    fallOff: Math.abs(0.03 * normal()),
    noise: 0.004 + 0.004 * Math.abs(normal()),
    quality: 85,
  };
}

export function rendered(camera: SceneCamera, scene: Scene, normal: () => number): Picture {
  const { width, height } = size;
  const white = toScreen(
    camera,
    grid.map(() => 1),
  );
  const sample = toScreen(
    camera,
    grid.map((nm) => 10 ** (-scene.a430Path * pigmentShape(nm, scene.hueIndex))),
  );
  const planes = [0, 1, 2].map(() => new Float64Array(width * height));
  for (let at = 0; at < width * height; at++) {
    const [x, y] = [at % width, Math.floor(at / width)];
    const seen = x >= 68 && x < 124 ? sample : white;
    const dimmed = scene.exposure * (1 - camera.fallOff * (2 * Math.hypot(x / width - 0.5, y / height - 0.5)) ** 2);
    planes.forEach((plane, place) => {
      const light = dimmed * (seen[place] / white[place]) ** camera.contrast;
      const noisy = light + camera.noise * Math.sqrt(Math.max(light, 0.001)) * normal();
      plane[at] = encoded(Math.max(0, noisy));
    });
  }
  const data = new Uint8ClampedArray(4 * width * height);
  planes
    .map((plane) => blocked(plane, width, camera.quality))
    .forEach((plane, place) => {
      plane.forEach((byte, at) => {
        data[4 * at + place] = byte;
      });
    });
  return { width, height, data };
}

function toScreen({ curves, light, matrix }: SceneCamera, transmittance: readonly number[]): number[] {
  const raw = balanced(curves, light, transmittance);
  return matrix.map((row) => row.reduce((sum, each, at) => sum + each * raw[at], 0));
}

/** Channels against white. */
function balanced(curves: readonly Float64Array[], light: readonly number[], of: readonly number[]): number[] {
  return curves.map((curve) => {
    const seen = curve.reduce((sum, each, at) => sum + each * (light[at] ?? 0) * (of[at] ?? 0), 0);
    return seen / curve.reduce((sum, each, at) => sum + each * (light[at] ?? 0), 0);
  });
}

/** Least squares over smooth made-up surfaces, rows that keep white: as makers fit their matrices to a chart of colours. */
function fittedMatrix(curves: readonly Float64Array[], light: readonly number[], normal: () => number): number[][] {
  const surfaces = Array.from({ length: 60 }, () => smoothSurface(normal));
  const raw = surfaces.map((surface) => balanced(curves, light, surface));
  const wanted = surfaces.map((surface) => seenByEye(surface));
  return [0, 1, 2].map((row) => {
    // Two unknowns: the third share makes their sum 1.
    const [i, j] = [0, 1, 2].filter((channel) => channel !== row);
    let [aa, ab, bb, ay, by] = [1e-6, 0, 1e-6, 0, 0];
    raw.forEach((channels, at) => {
      const [a, b, y] = [channels[i] - channels[row], channels[j] - channels[row], wanted[at][row] - channels[row]];
      aa += a * a;
      ab += a * b;
      bb += b * b;
      ay += a * y;
      by += b * y;
    });
    const det = aa * bb - ab * ab;
    const [p, q] = [(ay * bb - by * ab) / det, (by * aa - ay * ab) / det];
    const shares = [0, 0, 0];
    shares[i] = p;
    shares[j] = q;
    shares[row] = 1 - p - q;
    return shares;
  });
}

/** Linear sRGB of a surface in daylight, white being 1. */
function seenByEye(surface: readonly number[]): readonly number[] {
  const sums = (['x', 'y', 'z'] as const).map((axis) =>
    grid.reduce(
      (sum, _, at) => sum + (observer2Degree[axis][at] ?? 0) * (illuminantD65[at] ?? 0) * (surface[at] ?? 0),
      0,
    ),
  );
  const white = grid.reduce((sum, _, at) => sum + (observer2Degree.y[at] ?? 0) * (illuminantD65[at] ?? 0), 0);
  const [x, y, z] = sums.map((sum) => (100 * sum) / white);
  const { r, g, b } = linearRgb({ x, y, z });
  return [r, g, b];
}

function smoothSurface(normal: () => number): number[] {
  const [a, b, c] = [normal(), normal(), normal()];
  return grid.map((nm) => {
    const turn = ((nm - 380) / 400) * Math.PI;
    return 1 / (1 + Math.exp(-(0.6 + 1.5 * (a * Math.cos(turn) + b * Math.cos(2 * turn) + c * Math.cos(3 * turn)))));
  });
}

type Hump = readonly [nm: number, below: number, above: number];

function humps(main: Hump, second: Hump, share: number): Float64Array {
  return Float64Array.from(grid, (nm) => hump(nm, ...main) + share * hump(nm, ...second));
}

function hump(nm: number, middle: number, below: number, above: number): number {
  return Math.exp(-0.5 * ((nm - middle) / (nm < middle ? below : above)) ** 2);
}

/** JPEG's loss on one channel: cosine transform of blocks of eight, rounded to steps that grow with frequency (ITU T.81, annex K, in shape). */
function blocked(plane: Float64Array, width: number, quality: number): Float64Array {
  const out = new Float64Array(plane.length);
  const height = plane.length / width;
  const scale = (200 - 2 * quality) / 100;
  for (let top = 0; top < height; top += 8)
    for (let left = 0; left < width; left += 8) {
      const block = cosines.map((_, v) => cosines.map((_, u) => transform(plane, width, left, top, u, v)));
      const kept = block.map((row, v) => row.map((each, u) => rounded(each, scale * (12 + 6 * (u + v)))));
      for (let y = 0; y < 8; y++)
        for (let x = 0; x < 8; x++) out[(top + y) * width + left + x] = Math.round(restored(kept, x, y));
    }
  return out;
}

const cosines = Array.from({ length: 8 }, (_, u) =>
  Array.from({ length: 8 }, (_, x) => (u === 0 ? Math.SQRT1_2 : 1) * 0.5 * Math.cos(((2 * x + 1) * u * Math.PI) / 16)),
);

function transform(plane: Float64Array, width: number, left: number, top: number, u: number, v: number): number {
  let sum = 0;
  for (let y = 0; y < 8; y++)
    for (let x = 0; x < 8; x++) sum += cosines[u][x] * cosines[v][y] * plane[(top + y) * width + left + x];
  return sum;
}

function restored(block: readonly (readonly number[])[], x: number, y: number): number {
  let sum = 0;
  for (let v = 0; v < 8; v++) for (let u = 0; u < 8; u++) sum += cosines[u][x] * cosines[v][y] * block[v][u];
  return sum;
}

const rounded = (value: number, step: number): number => (step > 0 ? step * Math.round(value / step) : value);
