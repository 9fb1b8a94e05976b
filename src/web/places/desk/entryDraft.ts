/**
 * What was on the Desk at each entry of this tab's history, so that Back and Forward bring it back. The entry itself holds an id
 * alone: browsers allow few changes of it in a time, and a draft changes with every key.
 */
import { newId } from '../../records/newId.ts';
import { type Draft, readDraft } from './draft.ts';

const key = 'umberpan.desk.entries';
/** The oldest are let go. */
const mostEntries = 30;

interface Kept {
  readonly id: string;
  readonly draft: unknown;
}

/** The entry that the Desk shows. The browser goes to another one a moment before it says so. */
let shownId: string | undefined;

/** The draft of the present entry, which is shown from here on; undefined when it has none. */
export function entryDraft(): Draft | undefined {
  const id = entryId();
  shownId = id;
  const found = id === undefined ? undefined : keptEntries().find((each) => each.id === id);
  return found && readDraft(found.draft);
}

/** An entry that nobody was told of yet keeps its own. */
export function keepInEntry(draft: Draft): void {
  const there = entryId();
  if (there !== undefined && there !== shownId) return;
  const id = there ?? newId();
  shownId = id;
  if (there === undefined) history.replaceState({ ...history.state, desk: id }, '');
  const others = keptEntries().filter((each) => each.id !== id);
  try {
    sessionStorage.setItem(key, JSON.stringify([...others, { id, draft }].slice(-mostEntries)));
  } catch {
    // Without storage Back brings the address back, and a saved plan with it.
  }
}

function entryId(): string | undefined {
  const id: unknown = history.state?.desk;
  return typeof id === 'string' ? id : undefined;
}

function keptEntries(): readonly Kept[] {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(key) ?? '[]');
    return Array.isArray(kept) ? kept : [];
  } catch {
    return [];
  }
}
