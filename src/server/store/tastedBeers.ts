/** Beers with how they were liked, joined from glasses, tastings and lots. */
import type { Kysely } from 'kysely';
import type { NewGlass } from '../../api/glass.ts';
import type { KeptLot } from '../../api/lot.ts';
import type { TastedBeerRecord } from '../../api/tastedBeer.ts';
import type { NewTasting } from '../../api/tasting.ts';
import { cooksIn } from '../../core/beer/cooksIn.ts';
import type { Tables } from './tables.ts';

/** Those of the latest tastings, up to this many tastings: more than a brewer writes down in ten years. */
const mostTastings = 2000;

/** Beers with a tasting that said how it was liked, the one tasted last first. Lots that were taken off the shelf tell their cook all the same. */
export async function tastedBeers(db: Kysely<Tables>): Promise<TastedBeerRecord[]> {
  const rows = await db
    .selectFrom('tasting')
    .innerJoin('glass', 'glass.id', 'tasting.glass')
    .select(['glass.id', 'glass.body as glass', 'tasting.body as tasting'])
    .orderBy('tasting.tasted', 'desc')
    .orderBy('tasting.id', 'desc')
    .limit(mostTastings)
    .execute();
  const beers = new Map<string, { readonly glass: NewGlass; readonly likings: number[] }>();
  for (const { id, glass, tasting } of rows) {
    const { liking } = JSON.parse(tasting) as NewTasting;
    if (liking === null) continue;
    const beer = beers.get(id) ?? { glass: JSON.parse(glass) as NewGlass, likings: [] };
    beer.likings.push(liking);
    beers.set(id, beer);
  }
  const lots = await lotsIn(
    db,
    [...beers.values()].map(({ glass }) => glass),
  );
  return [...beers].map(([glassId, { glass, likings }]) => {
    const cooks = cooksIn(glass.doses, (id) => lots.get(id));
    return { glassId, name: glass.name, likings, cooks: [...cooks] };
  });
}

async function lotsIn(db: Kysely<Tables>, glasses: readonly NewGlass[]): Promise<Map<string, KeptLot>> {
  const ids = glasses.flatMap(({ doses }) => doses.flatMap(({ sugar }) => (sugar.kind === 'lot' ? [sugar.lotId] : [])));
  if (ids.length === 0) return new Map();
  const rows = await db
    .selectFrom('lot')
    .select(['id', 'body'])
    .where('id', 'in', [...new Set(ids)])
    .execute();
  return new Map(rows.map(({ id, body }) => [id, JSON.parse(body) as KeptLot]));
}
