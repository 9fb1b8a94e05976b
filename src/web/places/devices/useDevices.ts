/** The devices that are let in, and letting them in and out. */
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { Device, Invitation, Invited, Paired } from '../../../api/device.ts';
import { answerTo } from '../../records/answer.ts';
import { holdPass } from '../../records/pass.ts';

const key = ['devices'];
/** While somebody pairs, the list shows it soon, ms. */
const lookEveryMs = 2000;

export function useDevices() {
  return useQuery({
    queryKey: key,
    queryFn: async () => (await answerTo<{ devices: Device[] }>('/api/devices')).devices,
    refetchInterval: lookEveryMs,
  });
}

export function useInvite() {
  return useMutation({
    mutationFn: (invitation: Invitation) => answerTo<Invited>('/api/invitations', { method: 'POST', body: invitation }),
  });
}

/** @param id one device; all others when not given */
export function useLetOut() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (id?: string) => answerTo<void>(id ? `/api/devices/${id}` : '/api/devices', { method: 'DELETE' }),
    onSettled: () => client.invalidateQueries({ queryKey: key }),
  });
}

/** Says what a device is let in for from now on. */
export function useBind() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: ({ id, cook }: Pick<Device, 'id' | 'cook'>) =>
      answerTo<Device>(`/api/devices/${id}/cook`, { method: 'PUT', body: { cook } }),
    onSettled: () => client.invalidateQueries({ queryKey: key }),
  });
}

/** From then on this device shows the token with whatever it asks. */
export function usePair() {
  return useMutation({
    mutationFn: (asked: { readonly code: string; readonly name: string }) =>
      answerTo<Paired>('/api/pairing', { method: 'POST', body: asked }),
    onSuccess: ({ token }) => holdPass(token),
  });
}
