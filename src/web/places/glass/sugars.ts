/** The sugars that can go in a glass: lots off the shelf, sugars that were bought, and plain table sugar. */
import type { NewLot } from '../../../api/lot.ts';
import type { NoteRecord } from '../../../api/lotNote.ts';
import type { PlanRecord } from '../../../api/plan.ts';
import type { BoughtSugar, KeptGlass, KeptSugar, LotSugar } from '../../../core/beer/keptGlass.ts';
import type { GlassLot } from '../../../core/beer/sugarOfLot.ts';
import { specificFromRating } from '../../../core/colour/rating.ts';
import type { AlkaliGiven } from '../../../core/lot/lot.ts';

/** A lot as the Glass needs to know it; it may be on its way to the server. */
export interface ShelfLot {
  readonly id: string;
  readonly lot: NewLot;
  /** What was measured and taken of it, as far as that is known here. */
  readonly notes?: readonly NoteRecord[] | undefined;
}

/** A lot as the core takes it; nothing when it is not known here. */
export function glassLot(lots: readonly ShelfLot[], lotId: string): GlassLot | undefined {
  const known = lots.find(({ id }) => id === lotId);
  return known && { ...known.lot, notes: known.notes?.map(({ note }) => note) };
}

export interface Choosable {
  readonly id: string;
  readonly name: string;
  readonly sugar: KeptSugar;
}

const untold = { alkali: null, fermentable: null, pricePerKg: null } as const;

export function sugarOfShelf(lotId: string): LotSugar {
  return { kind: 'lot', lotId, ...untold };
}

export const newBoughtSugar: BoughtSugar = {
  kind: 'bought',
  name: 'Dark bought sugar',
  solids: 0.98,
  specific430AsIs: specificFromRating(150, 'tenPercentByWeight'),
  inverted: null,
  ...untold,
};

const tableSugar: BoughtSugar = {
  ...newBoughtSugar,
  name: 'White table sugar',
  solids: 0.9995,
  specific430AsIs: 0,
  inverted: 0,
  fermentable: 1,
  alkali: { substance: 'sodiumHydroxide', gramsPerKgSucrose: 0 },
};

/** Lots as they stand in the glass where they are in it, with what was told of them there. */
export function choosable({ doses }: KeptGlass, lots: readonly ShelfLot[]): readonly Choosable[] {
  const used = doses.map(({ sugar }) => sugar);
  const ofShelf = lots.map(({ id, lot }) => ({
    id,
    name: lot.name,
    sugar: used.find((sugar) => sugar.kind === 'lot' && sugar.lotId === id) ?? sugarOfShelf(id),
  }));
  const bought = used.flatMap((sugar, at) =>
    sugar.kind === 'bought' ? [{ id: `bought-${at}`, name: sugar.name, sugar }] : [],
  );
  return [...ofShelf, ...bought, { id: 'table', name: tableSugar.name, sugar: tableSugar }];
}

export function nameOfSugar(sugar: KeptSugar, lots: readonly ShelfLot[]): string {
  if (sugar.kind === 'bought') return sugar.name;
  return lots.find(({ id }) => id === sugar.lotId)?.lot.name ?? 'a lot that is not known here';
}

/** What the plan of a lot says of its alkali. */
export function alkaliOfPlan({ request }: PlanRecord): AlkaliGiven {
  const { route, alkali, alkaliGPerKg } = request;
  return { substance: alkali, gramsPerKgSucrose: route === 'pale' ? 0 : alkaliGPerKg };
}
