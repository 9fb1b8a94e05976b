/** A region of a picture as `1500,900,400,500`: from the left, from the top, its width and its height, in pixels. */
import type { Region } from '../../core/colour/photo/patch.ts';
import type { Input } from '../input.ts';
import { misused } from '../stop.ts';

const placeholder = '<x,y,w,h>';

export const regionInput = (meaning: string): Input<Region> => ({
  placeholder,
  meaning: `region in pixels of ${meaning}`,
  required: true,
  read: regionFrom,
});

export const regionsInput = (meaning: string): Input<readonly Region[]> => ({
  ...regionInput(meaning),
  several: true,
  read: (text, flag) => text.split(';').map((each) => regionFrom(each, flag)),
});

function regionFrom(text: string, flag: string): Region {
  const [, ...told] = /^\s*(\d{1,6})\s*,\s*(\d{1,6})\s*,\s*(\d{1,6})\s*,\s*(\d{1,6})\s*$/.exec(text) ?? [];
  const [left, top, width, height] = told.map(Number);
  if (left === undefined || top === undefined || width === undefined || height === undefined)
    return misused(flag, text, 'is no region', 'four whole numbers of pixels: left, top, width, height');
  return { left, top, width, height };
}
