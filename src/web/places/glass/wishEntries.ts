/** What is wished of the beer: each may stay empty. */
import { wishRanges } from '../../../core/beer/dose.ts';
import { a430FromEbc, ebcFromA430 } from '../../../core/colour/scales.ts';
import type { Entries, Entry } from '../../parts/entry.ts';
import { optional } from './optional.ts';
import { colourEntry, gravityEntry, shareEntry } from './quantities.ts';
import type { GlassUnits } from './shown.ts';

export interface Wish {
  readonly ebc: number | null;
  readonly share: number | null;
  readonly gravity: number | null;
}

export const emptyWish: Wish = { ebc: null, share: null, gravity: null };

export function wishEntries(units: GlassUnits): Entries<Wish> {
  const [least, most] = wishRanges.ebc;
  return {
    ebc: maybe(
      'ebc',
      colourEntry(
        {
          label: 'Colour of the beer',
          range: [a430FromEbc(least), a430FromEbc(most)],
          get: ({ ebc }) => a430FromEbc(ebc ?? 0),
          set: (wish, a430) => ({ ...wish, ebc: ebcFromA430(a430) }),
        },
        units,
      ),
    ),
    share: maybe(
      'share',
      shareEntry({
        label: 'Extract from sugar',
        range: wishRanges.extractShare,
        get: ({ share }) => share ?? 0,
        set: (wish, share) => ({ ...wish, share }),
      }),
    ),
    gravity: maybe(
      'gravity',
      gravityEntry(
        {
          label: 'Original gravity',
          range: wishRanges.gravity,
          get: ({ gravity }) => gravity ?? 1,
          set: (wish, gravity) => ({ ...wish, gravity }),
        },
        units,
      ),
    ),
  };
}

function maybe(field: keyof Wish, entry: Entry<Wish>): Entry<Wish> {
  return optional(
    entry,
    (wish) => wish[field] === null,
    (wish) => ({ ...wish, [field]: null }),
  );
}
