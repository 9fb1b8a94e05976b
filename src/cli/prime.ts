/** `umberpan prime`: how much of a sugar carbonates a beer in its bottles, and what pressure that makes. */
import type { Command } from 'commander';
import { primingRanges as ranges, usualPriming } from '../core/beer/priming.ts';
import { litres } from './glass/glassOptions.ts';
import { sugarHelp } from './glass/sugarText.ts';
import { quantity, readAll, type Texts, usually, word } from './input.ts';
import { addInputs } from './options.ts';
import { write, writeJson } from './output.ts';
import { carbonation } from './prime/carbonation.ts';
import { Stop, stopping } from './stop.ts';

const primeInputs = {
  volume: litres('beer to prime', ranges.volumeL),
  temperature: quantity('temperature', 'the warmest that it was since fermentation ended', 'C', ranges.beerC),
  wish: carbonation('carbonation wished, in all'),
  vessel: usually(word('what it goes into', ['ordinary', 'heavy', 'keg']), usualPriming.vessel),
  bottle: usually(litres('of one bottle', ranges.bottleL), '330mL'),
  air: usually(quantity('pressure', 'of the air', 'hPa', ranges.airPressurePa), '1013.25hPa'),
  units: usually(word('of masses shown', ['metric', 'us', 'imperial']), 'metric'),
} as const;

export function register(program: Command): void {
  const command = program
    .command('prime')
    .description('how much sugar carbonates a beer in its bottles, and the pressure');
  addInputs(command, primeInputs);
  command
    .option('--sugar <fields>', 'with what, as below without a mass (otherwise table sugar)')
    .option('--json', 'every number with its 10, 50 and 90 % marks as JSON')
    .addHelpText(
      'after',
      `
Fields of a sugar, parted by blanks or commas:
${sugarHelp()}

Exit codes: 0 done, 1 nothing to add, 2 misused, 7 refused because the vessel may burst.

Examples:
  umberpan prime --volume 20L --temperature 18C --wish 2.4vol
  umberpan prime --volume 5gal --temperature 68F --wish 2.6 --bottle 12floz --units us --sugar 'lot=plum.json'
  umberpan prime --volume 10L --temperature 20C --wish 7.9g/L --vessel heavy --json`,
    )
    .action(stopping(prime));
}

interface PrimeOptions extends Texts {
  readonly sugar?: string;
  readonly json?: boolean;
}

async function prime(options: PrimeOptions): Promise<void> {
  const { volume, temperature, wish, vessel, bottle, air, units } = readAll(primeInputs, options);
  const [{ primingFor }, sugar] = await Promise.all([import('../core/beer/priming.ts'), sugarOf(options.sugar)]);
  const request = {
    volumeL: volume,
    beerC: temperature,
    wishGPerL: wish,
    vessel,
    bottleL: bottle,
    airPressurePa: air,
  };
  const priming = primingFor(request, sugar);
  if (priming.kind === 'refused') {
    const { field, message } = priming;
    const limit = (await import('../core/beer/vessels.ts')).vessels[vessel].id;
    const refusals = [{ limit, field: `--${field}`, message }];
    throw new Stop({ kind: 'refused', message: `Refused (${limit}, --${field}): ${message}.`, refusals });
  }
  if (priming.kind === 'already') {
    const message = `--wish: the beer holds ${priming.residualGPerL.toFixed(2)} g/L already; no sugar is needed`;
    throw new Stop({ kind: 'failed', field: '--wish', message });
  }
  if (options.json) {
    const [{ primingCautions }, { formulas }] = await Promise.all([
      import('../core/beer/primingCautions.ts'),
      import('../core/beer/formulas.ts'),
    ]);
    const cautions = primingCautions(priming.numbers, vessel);
    writeJson({
      format: 'umberpan-prime-1',
      request,
      sugar,
      ...priming.numbers,
      cautions,
      source: formulas.carbonDioxide,
    });
  } else write((await import('./prime/primeText.ts')).primeText(request, sugar, priming.numbers, units));
}

async function sugarOf(text: string | undefined) {
  if (text === undefined) return (await import('../core/beer/boughtSugar.ts')).tableSugar;
  const { sugar, massKg } = await (await import('./glass/sugarFrom.ts')).sugarFrom(text, '--sugar');
  if (massKg === undefined) return sugar;
  throw new Stop({
    kind: 'misused',
    field: '--sugar mass',
    message: '--sugar mass is what is asked for: leave it out',
  });
}
