/** How the beers of each cook were liked, from all tastings on the server; nothing while it is not reached. */
import { useMemo } from 'react';
import { type LikedCook, likedCooks } from '../../../../core/beer/liked.ts';
import { useTastedBeers } from '../../../records/useTastedBeers.ts';

export interface Liked {
  /** The one liked best in the middle first. */
  readonly cooks: readonly LikedCook[];
  readonly of: (cookId: string) => LikedCook | undefined;
}

export function useLiked(): Liked {
  const beers = useTastedBeers().data;
  return useMemo(() => {
    const cooks = likedCooks(beers ?? []);
    const byId = new Map(cooks.map((cook) => [cook.cookId, cook]));
    return { cooks, of: (cookId) => byId.get(cookId) };
  }, [beers]);
}
