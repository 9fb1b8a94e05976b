/**
 * When a hidden pan reaches the end of its climb, against what the twin said on the way: a pan on a dial that is left alone, a reading
 * each 10 s, a look each minute of the last twenty. `COOKS=40 npm run bench arrival`.
 */
import { arrivalIn } from '../src/core/advice/arrival.ts';
import { outlook } from '../src/core/advice/outlook.ts';
import { createHiddenPan } from '../src/core/pan/hiddenPan.ts';
import { defaultKit, type Kit } from '../src/core/pan/kit.ts';
import { normalNumbers } from '../src/core/reactions/normal.ts';
import { createTwin } from '../src/core/twin/twin.ts';
import { readEveryS } from './measure/hiddenCook.ts';
import { cookOf } from './measure/referenceCook.ts';
import { publish, table } from './measure/report.ts';

const cooks = Number(process.env['COOKS'] ?? 40);
const members = 128;
const lookEveryS = 60;
const longestS = 2 * 3600;
const horizon = { reactionS: 0, everyS: 30, rows: 40, members: 20 } as const;

const kits: Readonly<Record<string, Kit>> = {
  ceramic: defaultKit,
  coil: { ...defaultKit, stove: { kind: 'coil', ratedPowerW: 2000, notches: 6 } },
  gas: { ...defaultKit, stove: { kind: 'gas', ratedPowerW: 2600, notches: 9 } },
};

interface Said {
  readonly atS: number;
  readonly lowS: number;
  readonly midS: number;
  readonly highS: number;
}

/** What was said each minute, and when the pan was there; nothing if it never was. */
function climb(kit: Kit, seed: number) {
  const { prepared, recipe } = cookOf({}, kit);
  const step = recipe.steps.find(({ kind }) => kind === 'climb');
  if (!step || !('reachedC' in step.end)) throw new Error('the plan has no climb');
  const toC = step.end.reachedC;
  const hidden = createHiddenPan(prepared, recipe.charge, normalNumbers(2 * seed));
  const twin = createTwin(prepared, recipe.charge, { members, seed });
  const on = { kind: 'heat', notch: step.approachNotch } as const;
  hidden.perform(on);
  twin.take({ timeS: 0, deed: on });
  const said: Said[] = [];
  for (let timeS = readEveryS; timeS < longestS; timeS += readEveryS) {
    const beforeC = hidden.temperatureC;
    hidden.moveTo(timeS);
    const afterC = hidden.temperatureC;
    if (afterC >= toC) return { thereS: timeS - (readEveryS * (afterC - toC)) / (afterC - beforeC), said };
    twin.take({ timeS, observation: { kind: 'reading', valueC: hidden.reading(), byHand: false } });
    if (timeS % lookEveryS !== 0) continue;
    const { range } = arrivalIn(outlook(twin, kit, [], horizon), toC);
    said.push({ atS: timeS, lowS: range.low, midS: range.mid, highS: range.high });
  }
  return undefined;
}

const lead = [
  { name: '1 to 5 min before', fromS: 60, toS: 300 },
  { name: '5 to 10 min before', fromS: 300, toS: 600 },
  { name: '10 to 20 min before', fromS: 600, toS: 1200 },
];
const rows = Object.entries(kits).flatMap(([name, kit]) => {
  const climbs = Array.from({ length: cooks }, (_, i) => climb(kit, i + 1)).filter((one) => one !== undefined);
  return lead.map(({ name: before, fromS, toS }) => {
    const looks = climbs.flatMap(({ thereS, said }) =>
      said.map((each) => ({ ...each, leftS: thereS - each.atS })).filter(({ leftS }) => leftS >= fromS && leftS < toS),
    );
    const inside = looks.filter(({ lowS, highS, leftS }) => leftS >= lowS && leftS <= highS);
    const off = looks.map(({ midS, leftS }) => Math.abs(midS - leftS)).sort((a, b) => a - b);
    return [
      name,
      before,
      String(looks.length),
      `${((100 * inside.length) / looks.length).toFixed(0)} %`,
      `${(off[off.length >> 1] / 60).toFixed(1)} min`,
    ];
  });
});
publish('arrival', 'Arrival', [
  `${cooks} hidden pans of each stove (1.25 times wider than stated) on a dial that is left alone. Inside: the pan was there within the 8 in 10 of the ${horizon.members} times said.`,
  table(['stove', 'said', 'looks', 'inside the 8 in 10', 'middle missed by, median'], rows),
]);
