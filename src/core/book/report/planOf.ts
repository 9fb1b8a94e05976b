/** Where a report carries the plan of its cook, and the way back. Apart, since whoever reads a plan needs no more of a report than this. */

/** Id of the element that carries the plan. */
export const planInReport = 'umberpan-plan';

/** The plan as JSON text; nothing for a text that is no report. */
export function planOfReport(text: string): string | undefined {
  if (!/^\s*<!doctype html>/i.test(text)) return undefined;
  const opening = `<script type="application/json" id="${planInReport}">`;
  const from = text.indexOf(opening);
  const to = text.indexOf('</script>', from);
  return from < 0 || to < 0 ? undefined : text.slice(from + opening.length, to);
}
