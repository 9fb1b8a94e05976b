/** What everything that is said for safety carries: an id to name it by, where it comes from, when it was written down here, and where it holds. */
export interface Sourced {
  readonly id: string;
  /** Seen, unless it says otherwise. */
  readonly source: string;
  /** A day, as 2026-11-25. */
  readonly date: string;
  /** ISO 3166 code, `EU`, or `any`. */
  readonly region: string;
}

/** Something to do or to leave, said for safety. */
export interface Statement extends Sourced {
  readonly text: string;
}

export const practice = 'common practice, no source';
/** Written down with the first of this, and true anywhere. */
export const anywhere = { date: '2026-11-25', region: 'any' } as const;
