/** A region of a picture by itself, made as small as the page makes it: finer grain tells nothing more of an even region. */
import { fewestPixels, type Picture, type Region } from '../../../core/colour/photo/patch.ts';

/** Longer side of the picture that is enough, pixels: the page reads none that is larger. */
const enough = 1600;

/** @throws RangeError when the region is not within the picture */
export function cutOut(picture: Picture, region: Region): Picture {
  const { left, top } = region;
  if (left + region.width > picture.width || top + region.height > picture.height)
    throw new RangeError(
      `${region.width} × ${region.height} pixels at ${left}, ${top} are not within ${picture.width} × ${picture.height}`,
    );
  const by = boxSide(picture, region);
  const [width, height] = [Math.floor(region.width / by), Math.floor(region.height / by)];
  const data = new Uint8ClampedArray(4 * width * height).fill(255);
  for (let at = 0; at < width * height; at++) {
    const [x, y] = [left + by * (at % width), top + by * Math.floor(at / width)];
    for (let channel = 0; channel < 3; channel++) data[4 * at + channel] = meanOfBox(picture, x, y, by, channel);
  }
  return { width, height, data };
}

/** Pixels that become one, along each side; a small region is left as it is. */
function boxSide(picture: Picture, { width, height }: Region): number {
  const by = Math.ceil(Math.max(picture.width, picture.height) / enough);
  return Math.floor(width / by) * Math.floor(height / by) >= fewestPixels ? by : 1;
}

function meanOfBox({ width, data }: Picture, left: number, top: number, side: number, channel: number): number {
  let sum = 0;
  for (let y = top; y < top + side; y++)
    for (let x = left; x < left + side; x++) sum += data[4 * (y * width + x) + channel];
  return sum / side ** 2;
}
