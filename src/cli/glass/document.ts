/** A beer with its sugars as JSON: every number with its 10, 50 and 90 % marks. */
import { formulas } from '../../core/beer/formulas.ts';
import type { Given } from '../../core/beer/given.ts';
import type { Glass } from '../../core/beer/glass.ts';
import { glassCautions } from '../../core/beer/glassCautions.ts';

export const format = 'umberpan-glass-1';

export function beerDocument(glass: Glass, given: Given) {
  return { glass, ...given, cautions: glassCautions(glass, given), formulas };
}
