/** The inputs of the server: the list, which tells how each does, and changes to it. */
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { Input, InputList, InputRecord, Ports } from '../../../../api/input.ts';
import { answerTo } from '../../../records/answer.ts';

const key = ['inputs'];
/** A thermometer that is being tried is watched, ms. */
const lookEveryMs = 1000;

export function useInputs() {
  return useQuery({
    queryKey: key,
    queryFn: () => answerTo<InputList>('/api/inputs'),
    refetchInterval: lookEveryMs,
  });
}

export function usePorts() {
  return useQuery({ queryKey: ['ports'], queryFn: async () => (await answerTo<Ports>('/api/inputs/ports')).ports });
}

function useChange<T>(mutationFn: (of: T) => Promise<unknown>) {
  const client = useQueryClient();
  return useMutation({ mutationFn, onSettled: () => client.invalidateQueries({ queryKey: key }) });
}

export const useAddInput = () => useChange((input: Input) => answerTo('/api/inputs', { method: 'POST', body: input }));

export const useRemoveInput = () => useChange((id: string) => answerTo(`/api/inputs/${id}`, { method: 'DELETE' }));

/** The password stays as it was: nobody but the server knows it. */
export const useSwitchInput = () =>
  useChange(({ id, input }: InputRecord) => {
    const { hasPassword: _, ...body } = { hasPassword: false, ...input, on: !input.on };
    return answerTo(`/api/inputs/${id}`, { method: 'PUT', body });
  });
