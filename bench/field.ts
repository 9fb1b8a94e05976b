/** The field of the Desk, 48 x 32 sugars: time in Node and in workers of Chromium, error of its colours against plans of their own, and of its bands against many draws. */
import { join } from 'node:path';
import { defaultKit } from '../src/core/pan/kit.ts';
import { type PreparedKit, prepareKit } from '../src/core/pan/preparedKit.ts';
import { bandDraws, fieldBand } from '../src/core/planning/field/band.ts';
import { madeByCourse } from '../src/core/planning/field/made.ts';
import {
  createField,
  type FieldSpec,
  fieldLines,
  requestAt,
  type Spot,
  usualField,
} from '../src/core/planning/field.ts';
import { landingOf } from '../src/core/planning/odds.ts';
import { planFor } from '../src/core/planning/plan.ts';
import { defaultRequest, type Route } from '../src/core/planning/request.ts';
import { rangeOf } from '../src/core/twin/range.ts';
import { type FieldTimes, fieldTimes } from './measure/fieldRun.ts';
import { slowed } from './measure/inChromium.ts';
import { publish, table } from './measure/report.ts';
import { timed } from './measure/timing.ts';

const barMs = 3000;
const prepared = prepareKit(defaultKit);
const routes: readonly Route[] = ['deep', 'bright', 'pale'];
const specOf = (route: Route): FieldSpec => usualField({ ...defaultRequest, route });

/** All spots, by column and row. */
function worked(spec: FieldSpec, kit: PreparedKit): (column: number, row: number) => Spot {
  const field = createField(spec, kit);
  const lines = new Map(fieldLines(spec).map((at) => [at, field.line(at)]));
  return (column, row) => {
    const { along, spots } = lines.get([...lines.values()][0].along === 'x' ? row : column) ?? {
      along: 'x',
      spots: [],
    };
    return spots[along === 'x' ? column : row];
  };
}

async function inNode(): Promise<string> {
  const rows: string[][] = [];
  for (const route of routes) {
    const spec = specOf(route);
    const all = await timed(() => worked(spec, prepared), 6);
    const alone = await timed(() => planFor(requestAt(spec, 24, 16), prepared));
    const spots = spec.x.count * spec.y.count;
    rows.push([
      `${route}: ${spec.x.lever} x ${spec.y.lever}`,
      `${all.medianMs.toFixed(0)} (${all.leastMs.toFixed(0)})`,
      (all.leastMs / spots).toFixed(2),
      alone.leastMs.toFixed(1),
    ]);
  }
  const spec = specOf('deep');
  const field = createField(spec, prepared);
  for (const at of fieldLines(spec)) field.line(at);
  let roastMinutes = 3;
  const slid = await timed(() => {
    roastMinutes = roastMinutes === 3 ? 4 : roastMinutes + 0.01;
    const other = field.further({ roastMinutes });
    for (const at of fieldLines(spec)) other.line(at);
  }, 3);
  rows.push(['deep, another roast hold', `${slid.medianMs.toFixed(0)} (${slid.leastMs.toFixed(0)})`, '', '']);
  return `## In Node, on one core\n\n${table(['field', 'ms', 'ms a spot', 'a plan of its own, ms'], rows)}`;
}

async function inBrowser(): Promise<string> {
  const rows: string[][] = [];
  let version = '';
  const module = join(process.cwd(), 'bench', 'measure', 'fieldRun.ts');
  const ran = await slowed(module, fieldTimes.name, 1, async (browser) => {
    version = browser.version;
    for (const workers of [1, 2]) {
      for (const route of routes) {
        const times: FieldTimes[] = [];
        for (let i = 0; i < 3; i++) times.push(await browser.inPage({ kind: 'run', spec: specOf(route), workers }));
        const { opened, first, eighth, all, band } = times.reduce((best, one) => (one.all < best.all ? one : best));
        const kept = all <= barMs ? 'kept' : 'missed';
        rows.push([
          route,
          String(workers),
          ...[opened, first, eighth, all].map((ms) => ms.toFixed(0)),
          kept,
          band.toFixed(0),
        ]);
      }
    }
  });
  if (!ran) return '## In a browser\n\nNot run: there is no Chromium.';
  return `## In Chromium ${version}, not slowed

From asking, workers started cold, to having it; the quickest of three. Bar: all lines in ${barMs} ms.

${table(['field', 'workers', 'opened', 'first line', 'an eighth', 'all, ms', 'bar', 'with its band'], rows)}`;
}

/** Spots spread over the field, ends and corners among them. */
const columns = [0, 5, 12, 20, 29, 38, 47];
const fieldRows = [0, 3, 9, 16, 24, 31];

function errors(): string {
  const rows = routes.map((route) => {
    const spec = specOf(route);
    const spotAt = worked(spec, prepared);
    const found: { readonly colour: number; readonly ebc: number; readonly minutes: number; readonly taste: number }[] =
      [];
    for (const column of columns) {
      for (const row of fieldRows) {
        const planned = planFor(requestAt(spec, column, row), prepared);
        const { made } = spotAt(column, row);
        if (planned.kind === 'refused' || !made) throw new Error(`spot ${column}, ${row} is refused`);
        const own = madeByCourse(planned.course, planned.plan, prepared);
        found.push({
          colour: Math.abs(made.a430 / own.a430 - 1),
          ebc: 25 * Math.abs(made.a430 - own.a430),
          minutes: Math.abs(made.minutes - own.minutes),
          taste: Math.max(
            ...Object.entries(own.taste).map(([name, value]) => Math.abs(made.taste[name as 'fruit'] - value)),
          ),
        });
      }
    }
    const worst = (of: keyof (typeof found)[0]): number => Math.max(...found.map((each) => each[of]));
    const { mid } = rangeOf(found.map(({ colour }) => colour));
    const { high } = rangeOf(found.map(({ colour }) => colour));
    const percent = (share: number): string => `${(100 * share).toFixed(2)} %`;
    return [
      route,
      String(found.length),
      percent(mid),
      percent(high),
      percent(worst('colour')),
      worst('ebc').toFixed(2),
      worst('minutes').toFixed(1),
      worst('taste').toFixed(2),
    ];
  });
  return `## Error against a plan of the spot's own

The field cooks with a tolerance of 1e-3, weighs in the same sugar everywhere, and takes up each step afresh; a plan is sized for its own spot and cooked
with 3e-5. Difference in A430, in minutes, and the worst in any index of taste.

${table(['field', 'spots', 'colour, median', '90 %', 'worst', 'worst, EBC', 'minutes, worst', 'taste, worst'], rows)}`;
}

const manyDraws = Number(process.env['DRAWS'] ?? 300);

function bands(): string {
  const rows: string[][] = [];
  for (const route of ['deep', 'bright'] as const) {
    const spec = specOf(route);
    const { sucroseKg } = createField(spec, prepared);
    const band = fieldBand(spec, prepared, sucroseKg);
    const spotAt = worked(spec, prepared);
    for (const [column, row] of [
      [4, 4],
      [12, 26],
      [24, 16],
      [36, 6],
      [44, 28],
    ] as const) {
      const planned = planFor(requestAt(spec, column, row), prepared);
      const { made } = spotAt(column, row);
      if (planned.kind === 'refused' || !made) throw new Error(`spot ${column}, ${row} is refused`);
      const drawn = rangeOf(Array.from({ length: manyDraws }, (_, i) => landingOf(planned.plan, prepared, 2, i).a430));
      const { low, high } = band.at(column / (spec.x.count - 1), row / (spec.y.count - 1));
      const two = (value: number): string => value.toFixed(2);
      rows.push([
        `${route} ${column}, ${row}`,
        ...[made.a430 * low, made.a430, made.a430 * high, drawn.low, drawn.mid, drawn.high].map(two),
        two((made.a430 * low) / drawn.low),
        two((made.a430 * high) / drawn.high),
      ]);
    }
  }
  return `## Bands

The 10 % and 90 % marks of A430 from ${bandDraws} kits at nine knots against those of ${manyDraws} draws of the spot's own plan, with spoonfuls that scatter.

${table(['spot', 'low', 'field', 'high', 'drawn low', 'drawn middle', 'drawn high', 'low, ratio', 'high, ratio'], rows)}`;
}

publish('field', 'The field', [await inNode(), await inBrowser(), errors(), bands()]);
