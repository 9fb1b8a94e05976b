/** Where the ranges of a kit come from before anything is known of it. */
import type { Kit } from '../../../core/pan/kit.ts';
import { kitParameters } from '../../../core/pan/kitParameters.ts';

export function stoveSource({ stove, thermometer }: Kit): string {
  const { stoveEfficiency } = kitParameters({ stove, thermometer });
  const { centre, sd, source } = stoveEfficiency;
  return `a ${stoveWords[stove.kind]} gives the pan ${(100 * centre).toFixed(0)} % of its rated power, give or take ${(100 * sd).toFixed(0)} (${source})`;
}

const stoveWords = { gas: 'gas burner', coil: 'coil', ceramic: 'ceramic ring', induction: 'induction ring' } as const;
