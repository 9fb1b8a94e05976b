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

/** What lists show of a cook, derived from its events up to `lastSeq` in the form that `form` counts. */
export interface CookSummaryTable {
  cook: string;
  lastSeq: number;
  form: number;
  body: string;
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
  removed: string | null;
}

export interface LotNoteTable {
  id: string;
  lot: string;
  at: string;
  body: string;
  created: string;
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

/** A device that was let in; the token itself is known to the device alone. */
export interface DeviceTable {
  id: string;
  name: string;
  role: 'keeper' | 'cook' | 'reader' | 'probe';
  tokenHash: string;
  paired: string;
  lastSeen: string;
  expires: string | null;
  /** The one cook that it is let in for, or `next`. */
  cook: string | null;
}

export interface InputTable {
  id: string;
  body: string;
  created: string;
}

export interface Tables {
  kit: KitTable;
  plan: PlanTable;
  cook: CookTable;
  event: EventTable;
  cook_summary: CookSummaryTable;
  lot: LotTable;
  lot_note: LotNoteTable;
  glass: GlassTable;
  tasting: TastingTable;
  device: DeviceTable;
  input: InputTable;
}
