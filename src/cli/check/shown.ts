/** What a check found, as a text and as a document. */
import type { Change } from '../../core/learn/changes.ts';
import type { Found } from '../../core/learn/checks/check.ts';
import { foundLines } from '../../core/learn/checks/foundWords.ts';
import type { Kit } from '../../core/pan/kit.ts';
import { changesDocument, changesTable } from '../learn/numbers.ts';
import { pairs } from '../table.ts';

export interface CheckTold {
  readonly found: Found;
  readonly changes: readonly Change[];
  readonly kit: Kit;
}

export function checkText({ found, changes, kit }: CheckTold): string {
  const lines = foundLines(found).map(
    ({ label, value, range }) => [label, range ? `${value}  (8 in 10: ${range})` : value] as const,
  );
  const told = changes.filter(({ narrowing }) => narrowing < 0.98);
  return [pairs(lines), `${kit.name}: 10-90 % ranges\n${changesTable(told)}`].join('\n\n');
}

export function checkDocument({ found, changes, kit }: CheckTold) {
  return { format: 'umberpan-check-1', found, numbers: changesDocument(changes), kit };
}
