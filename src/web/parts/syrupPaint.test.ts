import { expect, it } from 'vitest';
import { dropColour, dropDepthCm } from '../../core/colour/drop.ts';
import { specificFromRating } from '../../core/colour/rating.ts';
import { dropRings, poolColour } from './syrupPaint.ts';

const tone = { a430: 2, hueIndex: 6, waterShare: 0.04 };

it('a pool as deep as the core’s drop has the drop’s colour', () => {
  const { r, g, b } = dropColour(
    specificFromRating(25 * tone.a430, 'tenPercentByWeight'),
    tone.hueIndex,
    tone.waterShare,
  );
  expect(poolColour(tone, dropDepthCm)).toBe(`rgb(${r} ${g} ${b})`);
});

it('a drop is darkest in its middle and ends in the white of the plate', () => {
  const light = dropRings(tone).map(({ colour }) =>
    (colour.match(/\d+/g) ?? []).reduce((sum, each) => sum + Number(each), 0),
  );
  expect(light).toEqual(light.toSorted((a, b) => a - b));
  expect(light.at(-1)).toBe(3 * 255);
});
