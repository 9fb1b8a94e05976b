/** Of how many sugars in a glass it is known what alkali they had. */
import type { Glass } from '../../../core/beer/glass.ts';

export type MineralsTold = 'all' | 'some' | 'none';

/** `all` of a glass without sugars: nothing is missing. */
export function mineralsTold({ doses }: Pick<Glass, 'doses'>): MineralsTold {
  const known = doses.filter(({ sugar }) => sugar.minerals !== null).length;
  if (known === doses.length) return 'all';
  return known === 0 ? 'none' : 'some';
}
