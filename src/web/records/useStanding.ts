/** Who the server takes this device for. */
import { useQuery } from '@tanstack/react-query';
import type { Standing } from '../../api/device.ts';
import { answerTo } from './answer.ts';

const key = ['standing'];
/** While the server is away it is asked this often, ms. */
const askAgainMs = 10_000;

export function useStanding(): Standing | undefined {
  const { data } = useQuery({
    queryKey: key,
    queryFn: () => answerTo<Standing>('/api/standing'),
    staleTime: 60_000,
    refetchInterval: ({ state }) => (state.status === 'error' ? askAgainMs : false),
  });
  return data;
}

/** May let others in. */
export function useKeeps(): boolean {
  const standing = useStanding();
  return standing?.standing === 'host' || standing?.device?.role === 'keeper';
}

/** A guest who may look and not act. */
export function useLooksOn(): boolean {
  return useStanding()?.device?.role === 'reader';
}

/** Whether this device may do everything; undefined while that is not known. */
export function useIsKeeper(): boolean | undefined {
  const standing = useStanding();
  return standing && (standing.standing === 'host' || standing.device?.role === 'keeper');
}
