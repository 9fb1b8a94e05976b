/** The plan of a cook: from `--plan`, or from the options that say what is cooked and where. */
import type { Texts } from '../input.ts';
import type { Planning } from '../plan/makePlan.ts';
import { Stop } from '../stop.ts';

export async function planOrFile(options: Texts, inputIsTaken: string): Promise<Planning> {
  for (const name of ['plan', 'kit']) {
    if (options[name] !== '-') continue;
    const message = `--${name} -: standard input is taken for ${inputIsTaken}; name a file`;
    throw new Stop({ kind: 'misused', field: `--${name}`, value: '-', message });
  }
  const { planFromFile, planFromOptions } = await import('../plan/makePlan.ts');
  return typeof options['plan'] === 'string' ? planFromFile(options['plan'], options) : planFromOptions(options);
}
