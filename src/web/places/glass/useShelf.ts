/** All lots that can go in a glass: the server's, those on their way to it, and those that this browser remembers. */
import { useMemo } from 'react';
import { type Reach, reachOf } from '../../records/reach.ts';
import { useLots } from '../../records/useLots.ts';
import { useWaitingLots } from '../stove/setting/waitingLots.ts';
import type { ShelfLot } from './sugars.ts';

export interface Shelf {
  readonly lots: readonly ShelfLot[];
  readonly reach: Reach;
}

export function useShelf(remembered: readonly ShelfLot[]): Shelf {
  const { data, error } = useLots();
  const { waiting } = useWaitingLots();
  const lots = useMemo(() => {
    const all: readonly ShelfLot[] = [...waiting, ...(data ?? []), ...remembered];
    return all.filter(({ id }, at) => all.findIndex((each) => each.id === id) === at);
  }, [data, waiting, remembered]);
  return { lots, reach: reachOf(error) };
}
