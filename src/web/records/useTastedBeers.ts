/** Beers that were tasted, with how they were liked and the cooks that their sugars came from. */
import { type QueryClient, useQuery } from '@tanstack/react-query';
import type { TastedBeerRecord } from '../../api/tastedBeer.ts';
import { answerTo } from './answer.ts';

const key = ['tasted beers'];

export function useTastedBeers() {
  return useQuery({
    queryKey: key,
    queryFn: async () => (await answerTo<{ beers: TastedBeerRecord[] }>('/api/book/beers')).beers,
  });
}

/** After a tasting, a glass or a lot was changed, what follows from them is asked anew. */
export function forgetTastedBeers(client: QueryClient): Promise<void> {
  return client.invalidateQueries({ queryKey: key });
}
