/** All entries of the handbook, in the order in which they are listed. */
import { alkaliEntries } from './alkali.ts';
import { boilingEntries } from './boiling.ts';
import { colourEntries } from './colour.ts';
import type { Entry } from './entry.ts';
import { gravityEntries } from './gravity.ts';
import { reactionEntries } from './reactions.ts';
import { spoonfulEntries } from './spoonful.ts';
import { syrupEntries } from './syrup.ts';
import { waterEntries } from './water.ts';

/** Themes with their entries. */
export const handbook: readonly { readonly theme: string; readonly entries: readonly Entry[] }[] = [
  { theme: 'The boil', entries: [...boilingEntries, ...spoonfulEntries] },
  { theme: 'Syrup and candy', entries: syrupEntries },
  { theme: 'Reactions', entries: [...reactionEntries, ...alkaliEntries] },
  { theme: 'Colour', entries: colourEntries },
  { theme: 'Beer', entries: gravityEntries },
  { theme: 'Water and air', entries: waterEntries },
];

export const entries: readonly Entry[] = handbook.flatMap((theme) => theme.entries);
