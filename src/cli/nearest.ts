/** The known word that a mistyped one probably meant, by the fewest edits (Levenshtein 1966). */

/** @returns ` (did you mean x?)`, or nothing when no word is near */
export function suggestion(typed: string, words: readonly string[]): string {
  const [best] = words
    .map((word) => ({ word, edits: editsBetween(typed.toLowerCase(), word.toLowerCase()) }))
    .toSorted((a, b) => a.edits - b.edits);
  const near = best !== undefined && best.edits <= Math.max(1, Math.floor(best.word.length * 0.4));
  return near ? ` (did you mean ${best.word}?)` : '';
}

function editsBetween(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, at) => at);
  for (const [i, letter] of [...from].entries()) {
    const next = [i + 1];
    for (const [j, other] of [...to].entries()) {
      const swapped = (row[j] ?? 0) + (letter === other ? 0 : 1);
      next.push(Math.min(swapped, (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1));
    }
    row = next;
  }
  return row[to.length] ?? 0;
}
