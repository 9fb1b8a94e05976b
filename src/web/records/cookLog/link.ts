/** How this device stands with the server, as a screen tells it. */
import type { StorageState } from '../../../api/cook.ts';
import type { Storage } from './cookStore.ts';
import type { LinkState } from './following.ts';

export interface Link {
  readonly state: LinkState;
  /** Since the last beat of the server, whole s; null before the first. */
  readonly ageS: number | null;
  /** Own events that are not on the server yet. */
  readonly waiting: number;
  /** Own events that the server will never take. */
  readonly refused: number;
  /** Whether what is written on this device lasts. */
  readonly storage: Storage;
  /** Whether the server can write what it gets, as it last said. */
  readonly server: StorageState | null;
}

/** The former one, if nothing differs: so that whoever compares sees no change. */
export function nextLink(former: Link | undefined, next: Link): Link {
  return former && JSON.stringify(former) === JSON.stringify(next) ? former : next;
}
