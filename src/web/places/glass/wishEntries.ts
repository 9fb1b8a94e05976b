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
  /** Most of the extract that all sugars together may bring. */
  readonly mostShare: number;
}

export const emptyWish: Wish = { ebc: null, share: null, gravity: null, mostShare: 0.2 };

export function wishEntries(units: GlassUnits): Entries<Wish> {
  const [least, most] = wishRanges.ebc;
  return {
    ebc: maybe(
      'ebc',
      colourEntry(
        {
          label: 'Beer colour',
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
        label: 'Sugar share',
        hint: 'of the extract',
        range: wishRanges.extractShare,
        get: ({ share }) => share ?? 0,
        set: (wish, share) => ({ ...wish, share }),
      }),
    ),
    mostShare: shareEntry({
      label: 'Sugar at most',
      hint: 'of the extract: above a fifth wort is short of nitrogen',
      range: [0.01, wishRanges.extractShare[1]],
      get: ({ mostShare }) => mostShare,
      set: (wish, mostShare) => ({ ...wish, mostShare }),
    }),
    gravity: maybe(
      'gravity',
      gravityEntry(
        {
          label: 'Gravity',
          hint: 'original',
          range: wishRanges.gravity,
          get: ({ gravity }) => gravity ?? 1,
          set: (wish, gravity) => ({ ...wish, gravity }),
        },
        units,
      ),
    ),
  };
}

function maybe(field: 'ebc' | 'share' | 'gravity', entry: Entry<Wish>): Entry<Wish> {
  return optional(
    entry,
    (wish) => wish[field] === null,
    (wish) => ({ ...wish, [field]: null }),
  );
}
