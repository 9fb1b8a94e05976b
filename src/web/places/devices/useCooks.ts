/** Cooks by name, for what a device is let in for. */
import { useQuery } from '@tanstack/react-query';
import type { CookRecord } from '../../../api/cook.ts';
import { answerTo } from '../../records/answer.ts';

/** Older ones are shared from the Book. */
const most = 12;

export function useCooks(): readonly CookRecord[] {
  const { data } = useQuery({
    queryKey: ['cooks', 'to share'],
    queryFn: async () => (await answerTo<{ cooks: CookRecord[] }>(`/api/cooks?limit=${most}`)).cooks,
  });
  return data ?? [];
}

/** The cook that goes on, if there is one. */
export function goingOn(cooks: readonly CookRecord[]): CookRecord | undefined {
  return cooks.find(({ ended, mode }) => ended === null && mode === 'live');
}
