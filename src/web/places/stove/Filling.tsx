/** What fills a pan line while it is cooked: measured, estimated and expected, each drawn in its own way. */
import { area, line } from 'd3-shape';
import type { Layout } from '../../parts/panLine/layout.ts';
import type { Ahead, Row } from './view.ts';

interface Filling {
  readonly layout: Layout;
}

/** Least distance of dots, px. */
const dotsApart = 3;

/** Readings as dots; of those that would run into each other every few are drawn. */
export function Readings({ rows, layout: { x, y } }: Filling & { readonly rows: readonly Row[] }) {
  const everyS = (rows[1]?.timeS ?? 1) - (rows[0]?.timeS ?? 0);
  const every = Math.max(1, Math.ceil(dotsApart / (x(everyS) - x(0))));
  const dots = rows
    .filter((_, i) => i % every === 0)
    .map(({ timeS, readingC }) => `M${x(timeS).toFixed(1)} ${y(readingC).toFixed(1)}h0`)
    .join('');
  return <path className="readings" d={dots} />;
}

export function Belief({ rows, layout: { x, y } }: Filling & { readonly rows: readonly Row[] }) {
  const band = area<Row>()
    .digits(1)
    .x((row) => x(row.timeS))
    .y0((row) => y(row.believedC.low))
    .y1((row) => y(row.believedC.high))(rows as Row[]);
  const mid = line<Row>()
    .digits(1)
    .x((row) => x(row.timeS))
    .y((row) => y(row.believedC.mid))(rows as Row[]);
  return (
    <g>
      <path className="believed-band" d={band ?? ''} />
      <path className="course-halo believed-halo" d={mid ?? ''} />
      <path className="course" d={mid ?? ''} />
    </g>
  );
}

export function AheadBand({ ahead, layout: { x, y } }: Filling & { readonly ahead: Ahead }) {
  const { fromS, everyS, temperatureC } = ahead;
  const at = (i: number) => x(fromS + i * everyS);
  const band = area<Ahead['temperatureC'][number]>()
    .digits(1)
    .x((_, i) => at(i))
    .y0(({ low }) => y(low))
    .y1(({ high }) => y(high))(temperatureC as Ahead['temperatureC'][number][]);
  const mid = line<Ahead['temperatureC'][number]>()
    .digits(1)
    .x((_, i) => at(i))
    .y(({ mid: c }) => y(c))(temperatureC as Ahead['temperatureC'][number][]);
  return (
    <g className="ahead">
      <path className="ahead-band" d={band ?? ''} />
      <path className="dashes" d={mid ?? ''} />
    </g>
  );
}

/** Stirring, as a short wave above the rail of the dial. */
export function Stirs({ stirredS, layout }: Filling & { readonly stirredS: readonly number[] }) {
  const { x, plotBottom } = layout;
  const waves = stirredS.map((timeS) => `M${x(timeS) - 5} ${plotBottom + 3}q2.5-4 5 0t5 0`).join('');
  return <path className="stirs" d={waves} />;
}
