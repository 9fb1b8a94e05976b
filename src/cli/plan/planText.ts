/** A plan as a person reads it: what to weigh, what to mix, whether it fits, what to do, what to beware of. */
import { ebcFromA430 } from '../../core/colour/scales.ts';
import { centralValues } from '../../core/pan/model.ts';
import type { Account } from '../../core/planning/account.ts';
import type { AlkaliAmounts } from '../../core/planning/amounts.ts';
import { dialText } from '../../core/planning/dial.ts';
import { describe, type StepEnd } from '../../core/planning/forecast.ts';
import { alkaliFacts, cautionsFor, cautionText, hazardNamed } from '../../core/planning/handling.ts';
import type { Plan } from '../../core/planning/plan.ts';
import { checksFor } from '../../core/planning/preflight.ts';
import { formatSpoon } from '../../core/units/formatSpoon.ts';
import { pairs, table, wrapped } from '../table.ts';
import { accountText } from './accountText.ts';
import type { Aimed } from './aimedPlan.ts';
import { aimText } from './aimText.ts';
import type { Planning } from './makePlan.ts';
import { bandText, ebcText, endText, grams, stepNames } from './stepText.ts';

/** Grams to a hundredth below 10 g: what a pocket scale weighs. */
const millimetres = (m: number): string => `${(m * 1000).toFixed(0)} mm`;

export function planText(planning: Planning | Aimed, account?: Account): string {
  const { plan } = planning;
  const { alkali } = plan.amounts;
  const { ends } = describe(planning.course, centralValues(planning.kit), 1);
  return [
    title(plan),
    ...('landed' in planning ? [aimText(planning)] : []),
    `Weigh out\n${pairs(weighed(plan))}`,
    ...(alkali ? [solution(alkali)] : []),
    `Pan\n${pairs(fitRows(planning))}`,
    `Steps\n${stepTable(planning, ends)}`,
    invertedText(ends),
    ...(account ? [accountText(account)] : []),
    `Have ready\n${checksFor(plan, false)
      .map(({ text }) => `  ${wrapped(text, '  ')}`)
      .join('\n')}`,
    `Beware\n${[...plan.cautions.map(({ message }) => upperFirst(`${message}.`)), ...cautionsFor(plan).map(cautionText)]
      .map((text) => `  ${wrapped(text, '  ')}`)
      .join('\n')}`,
    'Bands and odds: umberpan simulate, with the same options.',
  ].join('\n\n');
}

const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function title({ request, yieldKg }: Plan): string {
  const { name, form, syrupSolids, route } = request;
  const what = form === 'hard' ? 'hard sugar' : `syrup of ${(100 * syrupSolids).toFixed(0)} Brix`;
  return `${name}: ${grams(yieldKg)} of ${what}, ${route} route`;
}

function weighed({ amounts: { charge, alkali }, letDownWaterKg }: Plan): [string, string][] {
  const rows: [string, string][] = [
    ['sugar', grams(charge.sucroseKg)],
    ['water', grams(charge.waterKg)],
  ];
  if (charge.maltExtractKg > 0) rows.push(['dry malt extract', grams(charge.maltExtractKg)]);
  if (charge.citricAcidKg > 0) rows.push(['citric acid', grams(charge.citricAcidKg)]);
  if (letDownWaterKg > 0) rows.push(['hot water', `about ${grams(letDownWaterKg)}, to let the syrup down`]);
  if (alkali) {
    const { name, words } = alkaliFacts(alkali.substance);
    rows.push([name, `${grams(alkali.weighedKg)} (${grams(alkali.pureKg)} pure), ${words}`]);
  }
  return rows;
}

function solution({ substance, weighedKg, waterKg, strength, parts }: AlkaliAmounts): string {
  const { name } = alkaliFacts(substance);
  const kind = substance === 'sodiumHydroxide' ? 'Lye' : 'Slurry';
  const each = (weighedKg + waterKg) / parts.length;
  return `${kind} of ${(100 * strength).toFixed(0)} %: ${hazardNamed(substance, strength)}\n${pairs([
    ['mix', `${grams(weighedKg)} ${name} into ${grams(waterKg)} cold water`],
    ['give', `${parts.length} parts of ${grams(each)}, 30 s or more apart, when browning begins`],
  ])}`;
}

function fitRows({ plan: { fit, mostFinishedKg }, kit }: Planning): [string, string][] {
  const { diameterM, heightM } = kit.pan;
  const foam = fit.foamStaysIn ? 'stays in' : 'MAY RUN OVER: take a higher pan';
  return [
    ['inside', `${(diameterM * 100).toFixed(0)} cm across, ${(heightM * 100).toFixed(0)} cm high`],
    ['syrup', `${millimetres(fit.depthM)} deep, ${(100 * fit.fill).toFixed(0)} % of the height (25 % allowed)`],
    ['foam', `to ${millimetres(fit.foamM)}, ${foam}`],
    ['probe', fit.probeCovered ? 'its tip is covered' : 'its tip is NOT COVERED: take a narrower pan'],
    ['spoon', `${formatSpoon(kit.spoonM3)} of cold water at a time`],
    ['takes up to', `${grams(mostFinishedKg)} finished, ${grams(fit.mostSugarKg)} of sugar weighed in`],
  ];
}

/** The band of it takes draws. */
function invertedText(ends: readonly StepEnd[]): string {
  const share = 100 * (ends.at(-1)?.inverted ?? 0);
  return `Inverted at the end: ${share.toFixed(0)} % of the sugar; where 8 in 10 cooks end: umberpan simulate.`;
}

function stepTable({ plan, course }: Planning, ends: readonly StepEnd[]): string {
  const rows = plan.steps.map((step, at) => {
    const end = ends[at];
    return [
      stepNames[step.kind],
      bandText(step),
      dialText(course, at),
      endText(step),
      end ? end.minutes.toFixed(0) : '',
      end ? end.endMinute.toFixed(0) : '',
      end && end.spoonfuls > 0 ? String(end.spoonfuls) : '',
      end ? ebcText(ebcFromA430(end.a430)) : '',
    ];
  });
  return table(
    [
      { head: 'step', align: 'left' },
      { head: 'band °C', align: 'left' },
      { head: 'dial', align: 'left' },
      { head: 'ends', align: 'left' },
      { head: 'min', align: 'right' },
      { head: 'at min', align: 'right' },
      { head: 'spoonfuls', align: 'right' },
      { head: 'EBC', align: 'right' },
    ],
    rows,
  );
}
