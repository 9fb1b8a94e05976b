/** The store's tables, as the query builder sees them. Times are RFC 3339 in UTC with milliseconds; documents are JSON. */
import type { Generated } from 'kysely';

export interface KitTable {
  id: string;
  name: string;
  body: string;
  version: number;
  created: string;
  updated: string;
}

export interface PlanTable {
  id: string;
  name: string;
  kit: string | null;
  request: string;
  created: string;
}

/** What lists need to know of a cook; all of it follows from its events. */
export interface CookTable {
  id: string;
  name: string;
  mode: 'live' | 'rehearsal';
  begun: string;
  ended: 'done' | 'abandoned' | null;
}

/** One event a row, never changed. `content` is the event as its client made it, in canonical form; `hash` links it to the cook's event before. */
export interface EventTable {
  seq: Generated<number>;
  id: string;
  cook: string;
  kind: string;
  content: string;
  received: string;
  prevHash: string;
  hash: string;
}

export interface LotTable {
  id: string;
  name: string;
  cook: string | null;
  plan: string | null;
  body: string;
  made: string;
  version: number;
  created: string;
  updated: string;
}

export interface GlassTable {
  id: string;
  name: string;
  body: string;
  version: number;
  created: string;
  updated: string;
}

export interface TastingTable {
  id: string;
  glass: string;
  tasted: string;
  body: string;
  created: string;
}

export interface Tables {
  kit: KitTable;
  plan: PlanTable;
  cook: CookTable;
  event: EventTable;
  lot: LotTable;
  glass: GlassTable;
  tasting: TastingTable;
}
