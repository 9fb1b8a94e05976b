import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Frames, frameAt, frameNames, leastSide } from '../../src/core/colour/photo/frames.ts';
import { guessedFrames } from '../../src/core/colour/photo/guessedFrames.ts';
import type { Picture } from '../../src/core/colour/photo/patch.ts';
import { readPicture } from '../../src/core/colour/photo/readPicture.ts';
import { afterKey } from '../../src/web/places/shelf/measure/photo/frames.ts';
import { casesOf, everyCase, tallyOf, timeFor } from './cases.ts';

const cases = casesOf(150);

it(
  'any pixels in any frames are a colour with its range, or are refused with every reason',
  async () => {
    const tally = tallyOf('pixels of photos');
    await everyCase(fc.tuple(pictures, placed), cases, ([picture, place]) => {
      const frames = place(picture);
      for (const { left, top, width, height } of Object.values(frames)) {
        expect(left >= 0 && top >= 0 && left + width <= picture.width && top + height <= picture.height).toBe(true);
      }
      const read = readPicture(picture, frames, 'daylight', []);
      tally.count(read.kind);
      if (read.kind === 'refused') {
        expect(read.faults.length).toBeGreaterThan(0);
        for (const { why } of read.faults) expect(why).toMatch(/\w/);
        expect(read.thinBy === undefined || (read.thinBy > 0 && Number.isFinite(read.thinBy))).toBe(true);
      } else expect([read.a430Path.mid, read.within].every((each) => each > 0 && Number.isFinite(each))).toBe(true);
    });
    tally.tell();
  },
  timeFor(cases, 100),
);

/** From the shortest side that is taken on. */
const side = fc.integer({ min: 80, max: 100 });
const byte = fc.integer({ min: 0, max: 255 });
const colour = fc.tuple(byte, byte, byte);
/** As a dilution beside white is, more or less. */
const likely = fc.tuple(
  fc.integer({ min: 190, max: 230 }),
  fc.integer({ min: 150, max: 200 }),
  fc.integer({ min: 60, max: 140 }),
);
const white = fc.integer({ min: 175, max: 255 }).map((grey) => [grey, grey, grey] as const);

const pictures: fc.Arbitrary<Picture> = fc
  .record({
    ...{
      width: side,
      height: side,
      sample: fc.oneof({ weight: 1, arbitrary: likely }, { weight: 40, arbitrary: colour }),
      ground: fc.oneof({ weight: 3, arbitrary: white }, colour),
    },
    ...{
      grain: fc.constantFrom(0, 1, 3, 30, 255),
      seed: fc.integer({ min: 1 }),
      missing: fc.constantFrom(0, 0, 0, 1000),
    },
  })
  .map(({ width, height, sample, ground, grain, seed, missing }) => {
    const data = new Uint8ClampedArray(4 * width * height - missing);
    let random = seed;
    for (let at = 0; at < data.length; at++) {
      random = (random * 1103515245 + 12345) % 2 ** 31;
      const x = (at >> 2) % width;
      const of = x > width / 3 && x < (2 * width) / 3 ? sample : ground;
      data[at] = (of[at % 4] ?? 255) + Math.round(grain * (random / 2 ** 31 - 0.5));
    }
    return { width, height, data };
  });

/** Where they are guessed, or where somebody puts them, and then moves them by keys. */
const spot = fc.record({
  x: fc.double({ min: -500, max: 500, noNaN: true }),
  y: fc.double({ min: -500, max: 500, noNaN: true }),
});
const wanted = fc.oneof(fc.double({ min: 0, max: 40, noNaN: true }), fc.double({ min: 0, max: 500, noNaN: true }));
const keys = fc.array(fc.constantFrom('ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', '+', '-', '=', 'x'), {
  maxLength: 20,
});
const placed = fc.oneof(
  fc.constant((picture: Picture): Frames => guessedFrames(picture).frames),
  fc.constant((picture: Picture): Frames => inThirds(picture)),
  fc
    .tuple(fc.array(spot, { minLength: 3, maxLength: 3 }), wanted, keys)
    .map(([spots, across, pressed]) => (picture: Picture): Frames => {
      const frames = frameNames.map((name, place) => {
        const first = frameAt(spots[place] ?? { x: 0, y: 0 }, across, picture);
        return [name, pressed.reduce((frame, key) => afterKey(key, frame, picture) ?? frame, first)] as const;
      });
      return Object.fromEntries(frames) as unknown as Frames;
    }),
);

function inThirds(picture: Picture): Frames {
  const at = (share: number) => frameAt({ x: share * picture.width, y: picture.height / 2 }, leastSide, picture);
  return { sample: at(1 / 2), white1: at(1 / 6), white2: at(5 / 6) };
}
