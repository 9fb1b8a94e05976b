/**
 * Which of the two spaces that phones write a colour profile names, told by its red and green (ICC.1, 9.2: columns of the matrix, in D50).
 * Both have the same tone curve, on which the measurement rests; a profile of another space is refused.
 */
import { convertP3ToXyz65, convertRgbToXyz65, convertXyz65ToRgb, convertXyz65ToXyz50 } from 'culori/fn';
import type { Picture } from '../../../core/colour/photo/patch.ts';
import { NoPicture } from './pixels.ts';

const toXyz = { sRGB: convertRgbToXyz65, 'Display P3': convertP3ToXyz65 } as const;
export type Space = keyof typeof toXyz;

const primaries = { rXYZ: { r: 1, g: 0, b: 0 }, gXYZ: { r: 0, g: 1, b: 0 } } as const;
const tagCountAt = 128;
/** Profiles of one space differ by less. */
const alike = 0.01;

/** @param profile none means sRGB, as everywhere */
export function spaceOf(profile: Buffer | undefined): Space {
  if (!profile) return 'sRGB';
  const spaces = Object.keys(toXyz) as Space[];
  const space = spaces.find((each) =>
    Object.entries(primaries).every(([tag, primary]) => {
      const { x, y, z } = convertXyz65ToXyz50(toXyz[each](primary));
      const told = columnOf(profile, tag);
      return told && [x, y, z].every((value, at) => Math.abs(value - (told[at] ?? 0)) < alike);
    }),
  );
  if (!space) throw new NoPicture(`has colours of another profile; allowed: ${spaces.join(', ')}`);
  return space;
}

/** Numbers are of 16 bits before the point and after it. */
function columnOf(profile: Buffer, tag: string): number[] | undefined {
  const count = profile.length < tagCountAt + 4 ? 0 : profile.readUInt32BE(tagCountAt);
  for (let at = tagCountAt + 4; at + 12 <= profile.length && at < tagCountAt + 4 + 12 * count; at += 12) {
    const from = profile.readUInt32BE(at + 4) + 8;
    if (profile.toString('latin1', at, at + 4) === tag && from + 12 <= profile.length)
      return [0, 4, 8].map((part) => profile.readInt32BE(from + part) / 65536);
  }
  return undefined;
}

/** As sRGB, which is what a page is given of a picture. */
export function inSrgb(picture: Picture, space: Space): Picture {
  if (space === 'sRGB') return picture;
  const data = new Uint8ClampedArray(picture.data);
  for (let at = 0; at < data.length; at += 4) {
    const [r, g, b] = data.slice(at, at + 3);
    const colour = convertXyz65ToRgb(toXyz[space]({ r: r / 255, g: g / 255, b: b / 255 }));
    data.set([255 * colour.r, 255 * colour.g, 255 * colour.b], at);
  }
  return { ...picture, data };
}
