/** Lots on the shelf: those that the server has, and how to ask for one by its id. */
import { useQuery } from '@tanstack/react-query';
import type { LotRecord } from '../../api/lot.ts';
import { answerTo } from './answer.ts';

/** As many as the server lists at once. */
const most = 500;

export function useLots() {
  return useQuery({
    queryKey: ['lots'],
    queryFn: async () => (await answerTo<{ lots: LotRecord[] }>(`/api/lots?limit=${most}`)).lots,
  });
}
