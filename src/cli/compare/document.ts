/** Two cooks beside each other as a JSON document. */
import { differencesOf } from '../../core/book/differences.ts';
import type { Explained } from '../../core/book/explain.ts';
import type { ToldCook } from './told.ts';

export function compareDocument(cooks: readonly [ToldCook, ToldCook], explained: Explained | undefined) {
  return {
    format: 'umberpan-comparison-1',
    cooks: cooks.map(({ file, name, state, landed }) => ({ file, name, mode: state.mode, landed })),
    rows: differencesOf(cooks.map(({ facts }) => facts)).map(({ what, unit, values: [first, second] }) => ({
      what,
      unit,
      first,
      second,
    })),
    ...(explained && { explained }),
  };
}
