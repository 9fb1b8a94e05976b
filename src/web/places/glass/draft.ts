/** What is in the Glass: the beer as entered, what of it is kept, and the lots that are in it. Survives a reload. */
import { type GlassRecord, newGlassSchema } from '../../../api/glass.ts';
import { newLotSchema } from '../../../api/lot.ts';
import { noteRecordSchema } from '../../../api/lotNote.ts';
import { z } from '../../../api/zod.ts';
import { usualPathCm, usualRest } from '../../../core/beer/glass.ts';
import type { KeptGlass } from '../../../core/beer/keptGlass.ts';
import { a430FromEbc } from '../../../core/colour/scales.ts';
import { keep, kept } from '../../parts/browserStorage.ts';
import type { Sheet } from '../../parts/entry.ts';
import type { PrintedAs } from './doseEntries.ts';
import { colourPrints, extractPrints } from './printedAs.ts';
import { newBoughtSugar, type ShelfLot } from './sugars.ts';

export interface GlassBase {
  readonly id: string;
  readonly version: number;
  readonly glass: KeptGlass;
}

export interface GlassDraft {
  readonly sheet: Sheet<KeptGlass>;
  /** The kept glass that this one was opened from or kept as. */
  readonly base: GlassBase | null;
}

/** A strong amber beer, as a start. */
export const freshDraft: GlassDraft = {
  sheet: {
    good: {
      name: 'First beer',
      rest: { volumeL: 20, gravity: 1.06, a430PerCm: a430FromEbc(12), ...usualRest },
      doses: [{ sugar: newBoughtSugar, massKg: 0.5, added: 'kettle' }],
      kettleLossL: 0,
      pathCm: usualPathCm,
      boughtPricePerKg: null,
      bottledOn: null,
    },
    texts: {},
  },
  base: null,
};

export const usualPrints: PrintedAs = { extract: 'solids', colour: 'ebc10ww' };

const key = 'umberpan.glass';
const printOf = <Key extends string>(prints: Readonly<Record<Key, unknown>>) =>
  z.enum(Object.keys(prints) as [Key, ...Key[]]);
const schema = z.object({
  draft: z.object({
    sheet: z.object({ good: newGlassSchema, texts: z.record(z.string(), z.string()).catch({}) }),
    base: z.object({ id: z.string(), version: z.number(), glass: newGlassSchema }).nullable().catch(null),
  }),
  as: z.object({ extract: printOf(extractPrints), colour: printOf(colourPrints) }).catch(usualPrints),
  lots: z
    .array(z.object({ id: z.string(), lot: newLotSchema, notes: z.array(noteRecordSchema).optional().catch([]) }))
    .catch([]),
});

export interface KeptDraft {
  readonly draft: GlassDraft;
  readonly as: PrintedAs;
  /** Those in it, so that it still computes without the server. */
  readonly lots: readonly ShelfLot[];
}

export function keptDraft(): KeptDraft | undefined {
  try {
    const read = schema.safeParse(JSON.parse(kept(key) ?? 'null'));
    return read.success ? read.data : undefined;
  } catch {
    return undefined;
  }
}

export function keepDraft({ draft, as, lots }: KeptDraft): void {
  const used = draft.sheet.good.doses.flatMap(({ sugar }) => (sugar.kind === 'lot' ? [sugar.lotId] : []));
  const known = lots.filter(({ id }) => used.includes(id)).map(({ id, lot, notes }) => ({ id, lot, notes }));
  keep(key, JSON.stringify({ draft, as, lots: known }));
}

export function opened({ id, version, glass }: GlassRecord): GlassDraft {
  return { sheet: { good: glass, texts: {} }, base: { id, version, glass } };
}

export function isKept({ sheet, base }: GlassDraft): boolean {
  return base !== null && canonical(sheet.good) === canonical(base.glass);
}

/** Whether nobody has changed anything of the beer that the Glass starts with. */
export function isFresh({ sheet, base }: GlassDraft): boolean {
  return base === null && canonical(sheet.good) === canonical(freshDraft.sheet.good);
}

/** The same text for the same glass, in whatever order its fields came. */
function canonical(value: unknown): string {
  return JSON.stringify(value, (_, each: unknown) =>
    each !== null && typeof each === 'object' && !Array.isArray(each)
      ? Object.fromEntries(Object.entries(each).toSorted(([a], [b]) => (a < b ? -1 : 1)))
      : each,
  );
}
