/** The cooks that can be learned from: those of the server, and those that only this device has. */
import { useQuery } from '@tanstack/react-query';
import type { CookRecord } from '../../../api/cook.ts';
import { answerTo } from '../../records/answer.ts';
import { cooksHere } from '../../records/cookLog/openCookLog.ts';

export interface CookListed {
  readonly id: string;
  readonly name: string;
  readonly mode: 'live' | 'rehearsal';
  readonly beganAt: string;
  readonly ended: 'done' | 'abandoned' | null;
  readonly where: 'server' | 'device';
}

const most = 500;

export function useKeptCooks() {
  const { data, isPending } = useQuery({
    queryKey: ['kit', 'cooks'],
    // A cook may have ended at the stove a moment ago.
    refetchOnMount: 'always',
    queryFn: async (): Promise<readonly CookListed[]> => {
      const [server, here] = await Promise.all([
        answerTo<{ cooks: CookRecord[] }>(`/api/cooks?limit=${most}`).then(
          ({ cooks }) => cooks,
          () => [],
        ),
        cooksHere(),
      ]);
      const kept = server.map(({ id, name, mode, begun, ended }): CookListed => {
        return { id, name, mode, beganAt: begun, ended, where: 'server' };
      });
      const only = here.filter(({ id }) => !kept.some((cook) => cook.id === id));
      return [...kept, ...only.map((cook): CookListed => ({ ...cook, where: 'device' }))].sort((a, b) =>
        a.beganAt < b.beganAt ? 1 : -1,
      );
    },
  });
  return { cooks: data ?? [], isPending };
}
