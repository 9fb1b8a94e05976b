/** The store's tables, as the query builder sees them. Times are RFC 3339 in UTC with milliseconds; documents are JSON. */

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

export interface Tables {
  kit: KitTable;
  plan: PlanTable;
}
