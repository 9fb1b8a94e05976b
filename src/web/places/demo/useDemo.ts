/** The demo on the server: whether it is in, and putting it in or taking it out. */
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { Demo } from '../../../api/demo.ts';
import { answerTo } from '../../records/answer.ts';

const key = ['demo'];

export function useDemo() {
  return useQuery({ queryKey: key, queryFn: () => answerTo<Demo>('/api/demo') });
}

export function useMoveDemo() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (to: 'in' | 'out') => answerTo<unknown>('/api/demo', { method: to === 'in' ? 'PUT' : 'DELETE' }),
    // It has a part in every place.
    onSettled: () => client.invalidateQueries(),
  });
}
