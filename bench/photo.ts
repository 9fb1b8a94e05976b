/**
 * Colour by photo on rendered scenes and on published camera curves: how far off, and how often the stated range holds the truth.
 */
import { readFileSync } from 'node:fs';
import { patchOf } from '../src/core/colour/photo/patch.ts';
import { photoAbsorbance } from '../src/core/colour/photo/photoAbsorbance.ts';
import { type PhotoColour, photoColour, type Shot, type Standard } from '../src/core/colour/photo/photoColour.ts';
import type { LightKind } from '../src/core/colour/photo/viewer.ts';
import { normalNumbers } from '../src/core/reactions/normal.ts';
import { regions, rendered, type SceneCamera, sceneCamera } from './measure/renderedPhoto.ts';
import { publish, table } from './measure/report.ts';

const scenes = Number(process.env['SCENES'] ?? 150);

interface Judged {
  readonly off: number;
  readonly inside: boolean;
  readonly width: number;
}

const judged = ({ a430Path: { low, mid, high } }: PhotoColour, truth: number): Judged => ({
  off: Math.abs(mid / truth - 1),
  inside: low <= truth && truth <= high,
  width: high / low,
});

function shot(camera: SceneCamera, a430Path: number, hueIndex: number, normal: () => number): Shot | undefined {
  const picture = rendered(camera, { a430Path, hueIndex, exposure: 0.75 }, normal);
  const seen = photoAbsorbance(
    patchOf(picture, regions.sample),
    regions.whites.map((region) => patchOf(picture, region)),
  );
  return seen.kind === 'seen' ? { ...seen, strength: 1 } : undefined;
}

/** One scene of a camera of its own, with a known dilution seen before or without. */
function scene(seed: number, light: LightKind, calibrated: boolean): Judged | undefined {
  const normal = normalNumbers(1000 + 31 * seed + (light === 'lamp' ? 7 : 0));
  const camera = sceneCamera(normal, light === 'lamp');
  const truth = 0.45 * Math.exp(0.45 * normal());
  const seen = shot(camera, truth, 6 + 0.6 * normal(), normal);
  const known = shot(camera, 0.4, 6 + 0.6 * normal(), normal);
  if (!seen || !known) return undefined;
  // What is called known is off itself.
  const standard: Standard = { ...known, a430Path: 0.4 * Math.exp(0.03 * normal()), knownWithin: 0.03 };
  return judged(photoColour([seen], calibrated ? [standard] : [], light, normal), truth);
}

/** Blue that absorbs less asks for a stronger dilution. */
const paleBlue = 0.15;
/** A430 over the path that a picture reads well: about where blue lies when the dilution is the one that is asked for. */
const goodRange = [0.2, 0.6] as const;

/** Published curves: rows of one camera and light; a standard is the row of hue index 6 at 0.4. */
function published(calibrated: boolean, [least, most]: readonly [number, number]): Judged[] {
  const rows = readFileSync('reference/phone-channel-absorbance.csv', 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => line.split(','))
    .filter(
      ([, , spectrum, , , , blue]) => spectrum?.startsWith('HI') && Number(blue) >= paleBlue && Number(blue) <= 0.9,
    );
  const normal = normalNumbers(5);
  const shotOf = ([, , , , r, g, b]: readonly string[]): Shot => ({
    absorbance: { r: Number(r) + 0.003 * normal(), g: Number(g) + 0.004 * normal(), b: Number(b) + 0.006 * normal() },
    sd: { r: 0.006, g: 0.006, b: 0.006 },
    strength: 1,
  });
  const isKnown = ([, , spectrum, a430]: readonly string[]): boolean => spectrum === 'HI6' && a430 === '0.4';
  return rows
    .filter((row) => !isKnown(row) && Number(row[3]) >= least && Number(row[3]) <= most)
    .map((row) => {
      const same = rows.find((each) => isKnown(each) && each[0] === row[0] && each[1] === row[1]);
      const known: Standard[] = calibrated && same ? [{ ...shotOf(same), a430Path: 0.4, knownWithin: 0.03 }] : [];
      const light: LightKind = row[0]?.startsWith('D') ? 'daylight' : 'lamp';
      return judged(photoColour([shotOf(row)], known, light, normal), Number(row[3]));
    });
}

const share = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(0)} %`;
const middle = (values: number[]): number => values.sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;

function line(what: string, all: readonly (Judged | undefined)[]): string[] {
  const known = all.filter((each) => each !== undefined);
  return [
    what,
    String(known.length),
    `${(100 * middle(known.map(({ off }) => off))).toFixed(1)} %`,
    share(known.filter(({ inside }) => inside).length, known.length),
    middle(known.map(({ width }) => width)).toFixed(2),
  ];
}

/** Too dark for a picture without another dilution, though blue is still told apart. */
const darker = [0.7, 2] as const;

const seeds = Array.from({ length: scenes }, (_, at) => at);
const lines = [
  ...(['daylight', 'lamp'] as const).flatMap((light) =>
    [true, false].map((calibrated) =>
      line(
        `rendered, ${light}, ${calibrated ? 'known dilution seen' : 'unknown phone'}`,
        seeds.map((seed) => scene(seed, light, calibrated)),
      ),
    ),
  ),
  line('published curves, good range, known dilution seen', published(true, goodRange)),
  line('published curves, good range, unknown phone', published(false, goodRange)),
  line('published curves, darker, known dilution seen', published(true, darker)),
  line('published curves, darker, unknown phone', published(false, darker)),
];

publish('photo', 'Colour by photo', [
  `Scenes are rendered from straight-line spectra through cameras of another kind than those that the measurement draws from (bench/measure/renderedPhoto.ts), with fall-off, noise, a tone curve and JPEG’s blocks; absorbance at 430 nm over the path is 0.45 times a factor of 1.6 either way (1 sd). A known dilution is one of 0.4, known within 3 %. Published curves are those of reference/phone-channel-absorbance.csv: a camera with colour filters, one with a stacked sensor without its colour matrix, and the ideal sRGB matrix under five lights; the good range is an absorbance at 430 nm of ${goodRange.join(' to ')} over the path, with blue absorbing at least ${paleBlue}. The bar, in the good range: median error 5 %, and 90 % of stated ranges (nine in ten) hold the truth.`,
  table(['what', 'pictures', 'median error', 'range holds truth', 'upper over lower end of the range'], lines),
]);
