/**
 * Advice on hidden kits: a person who follows it 25 s late with spoonfuls that scatter by 20 %, against the same person with the
 * thermometer and a plain rule (too hot: a spoonful; often: turn down; too cold: turn up). `COOKS=40 npm run bench advice`.
 */
import { createRehearsal, followAdvice } from '../src/core/advice/rehearsal.ts';
import { defaultKit, type Kit } from '../src/core/pan/kit.ts';
import { drawnValues } from '../src/core/pan/model.ts';
import { carefulPerson } from '../src/core/pan/person.ts';
import { simulate } from '../src/core/pan/simulate.ts';
import { normalNumbers } from '../src/core/reactions/normal.ts';
import { bareCook } from '../test/bareCook.ts';
import { type Cook, cookOf } from './measure/referenceCook.ts';
import { publish, table } from './measure/report.ts';

const cooks = Number(process.env['COOKS'] ?? 6);
const members = Number(process.env['MEMBERS'] ?? 128);
const reactionS = 25;

const kits: Readonly<Record<string, Kit>> = {
  ceramic: defaultKit,
  coil: { ...defaultKit, stove: { kind: 'coil', ratedPowerW: 2000, notches: 6 } },
  gas: { ...defaultKit, stove: { kind: 'gas', ratedPowerW: 2600, notches: 9 } },
  induction: { ...defaultKit, stove: { kind: 'induction', ratedPowerW: 2000, notches: 9 } },
};

interface Kept {
  seconds: number;
  inside: number;
  spoonfuls: number;
  turns: number;
}

const nothing = (): Kept => ({ seconds: 0, inside: 0, spoonfuls: 0, turns: 0 });

function advised({ prepared, recipe }: Cook, seed: number, kept: Kept): number {
  const rehearsal = createRehearsal({
    prepared,
    begun: bareCook(recipe.charge, recipe.steps, seed, prepared.kit),
    members,
  });
  const begun = performance.now();
  let looks = 0;
  followAdvice(rehearsal, recipe.steps, { reactionS, longestS: 5 * 3600 }, ({ progress, hidden }, { deeds }) => {
    looks++;
    const step = recipe.steps[progress.stepIndex];
    for (const deed of deeds) {
      if (deed.kind === 'water') kept.spoonfuls += deed.spoonfuls;
      if (deed.kind === 'heat') kept.turns++;
    }
    if (!('heldMinutes' in step.end) || progress.inBandSinceS === undefined) return;
    kept.seconds++;
    const t = hidden.temperatureC;
    if (t >= step.bandC[0] && t <= step.bandC[1]) kept.inside++;
  });
  return (performance.now() - begun) / looks;
}

function alone({ prepared, recipe }: Cook, seed: number, kept: Kept): void {
  const normal = normalNumbers(2 * seed);
  const values = drawnValues(prepared.kit, () => 1.25 * normal());
  const course = simulate(recipe, prepared, values, { normal, habits: { ...carefulPerson, reactionS } });
  for (const { deed } of course.deeds) {
    if (deed.kind === 'water') kept.spoonfuls += deed.spoonfuls;
    if (deed.kind === 'heat') kept.turns++;
  }
  course.steps.forEach(({ startS, endS }, i) => {
    const step = recipe.steps[i];
    if (!('heldMinutes' in step.end)) return;
    const hold = course.readingC.slice(Math.ceil(startS), Math.floor(endS));
    const from = hold.findIndex((t) => t >= step.bandC[0]);
    const temperatures = course.temperatureC.slice(Math.ceil(startS) + from, Math.floor(endS));
    kept.seconds += temperatures.length;
    kept.inside += temperatures.filter((t) => t >= step.bandC[0] && t <= step.bandC[1]).length;
  });
}

const rows: string[][] = [];
for (const [name, kit] of Object.entries(kits)) {
  const cook = cookOf({}, kit);
  const withAdvice = nothing();
  const without = nothing();
  let ms = 0;
  for (let seed = 1; seed <= cooks; seed++) {
    ms += advised(cook, seed, withAdvice) / cooks;
    alone(cook, seed, without);
  }
  for (const [who, kept] of [
    ['advice', withAdvice],
    ['plain rule', without],
  ] as const) {
    rows.push([
      name,
      who,
      `${((100 * kept.inside) / kept.seconds).toFixed(1)} %`,
      (kept.spoonfuls / cooks).toFixed(1),
      (kept.turns / cooks).toFixed(1),
      who === 'advice' ? ms.toFixed(0) : '',
    ]);
  }
}
publish('advice', 'Advice', [
  `${cooks} hidden kits of each stove (1.25 times wider than stated), the Desk's first request, ${members} members, ${reactionS} s from card to act, spoonfuls scattering by 20 %. The bar: in band for 95 % of the hold time, with fewer spoonfuls than the plain rule.`,
  table(
    [
      'stove',
      'steered by',
      'in band',
      'spoonfuls a cook',
      'turns of the dial a cook',
      'ms for a reading and its advice',
    ],
    rows,
  ),
]);
