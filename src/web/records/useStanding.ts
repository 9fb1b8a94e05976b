/** Who the server takes this device for. */
import { useQuery } from '@tanstack/react-query';
import type { Standing } from '../../api/device.ts';
import { answerTo } from './answer.ts';

const key = ['standing'];

export function useStanding(): Standing | undefined {
  const { data } = useQuery({
    queryKey: key,
    queryFn: () => answerTo<Standing>('/api/standing'),
    staleTime: 60_000,
  });
  return data;
}

/** A guest who may look and not act. */
export function useLooksOn(): boolean {
  return useStanding()?.device?.role === 'reader';
}
