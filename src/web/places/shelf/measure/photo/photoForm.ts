/** Colour from a picture as a form: what is typed in beside the picture. */
import { type PhotoSetUp, noteRanges as ranges } from '../../../../../core/lot/note.ts';
import type { Entries } from '../../../../parts/entry.ts';
import { quantityEntry } from '../../../../parts/numberEntry.ts';
import { madeUpEntries, usualMadeUp } from '../madeUpEntries.ts';

export const photoForm = {
  name: 'Picture',
  says: 'a dilution beside white, by this phone, for the colour',
  steps: [
    'Stand the dilution in a clear, plain glass with white paper behind or below it, and a like glass of water to either side. With only one of water, put both white frames in it.',
    'One even light: a window, or one lamp. No flash, no shadow, no coloured wall close by.',
    'Hold a finger on the white until exposure and focus are locked; make it a little darker if the white glares. All glasses in one picture, straight on.',
  ],
  start: { ...usualMadeUp, light: 'daylight', paper: 'behind', pathCm: 6 } as PhotoSetUp,
} as const;

/** The liquid in the line of sight is measured another way with the paper below. */
export function photoEntries({ paper }: PhotoSetUp): Entries<PhotoSetUp> {
  return {
    ...madeUpEntries<PhotoSetUp>(),
    pathCm: quantityEntry<PhotoSetUp, 'length'>({
      label: paper === 'behind' ? 'Inner width of the glass' : 'Depth of the liquid',
      hint: paper === 'behind' ? 'where the light goes through' : 'light passes it down and up again',
      range: ranges.pathCm,
      dimension: 'length',
      unit: 'cm',
      scale: 1e-2,
      get: ({ pathCm }) => pathCm,
      set: (setUp, pathCm) => ({ ...setUp, pathCm }),
    }),
  };
}
