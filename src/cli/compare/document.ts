/** Two cooks, or two plans, beside each other as a JSON document. */
import type { Explained } from '../../core/book/explain.ts';
import { rowsOf, type ToldPair } from './told.ts';

export function compareDocument(pair: ToldPair, explained: Explained | undefined) {
  return {
    ...about(pair),
    rows: rowsOf(pair).map(({ what, unit, values: [first, second] }) => ({ what, unit, first, second })),
    ...(explained && { explained }),
  };
}

function about([first, second]: ToldPair) {
  if (first.kind === 'plan' && second.kind === 'plan') {
    const plans = [first, second].map(({ file, name, planning }) => ({ file, name, kit: planning.kit }));
    return { format: 'umberpan-plan-comparison-1', plans };
  }
  const cooks = [first, second].flatMap((told) => {
    if (told.kind === 'plan') return [];
    return [{ file: told.file, name: told.name, mode: told.state.mode, landed: told.landed }];
  });
  return { format: 'umberpan-comparison-1', cooks };
}
