/** What fills a pan line while it is cooked: measured, estimated and expected, each drawn in its own way. */
import { area, line } from 'd3-shape';
import { type Layout, panelY } from '../../parts/panLine/layout.ts';
import { PanelFrame } from '../../parts/panLine/Panels.tsx';
import type { Ahead, Row } from './view.ts';

interface Filling {
  readonly layout: Layout;
}

/** Least distance of dots, px. */
const dotsApart = 3;

/** Readings as dots; of those that would run into each other every few are drawn. */
export function Readings({ rows, layout: { x, y } }: Filling & { readonly rows: readonly Row[] }) {
  let lastX = Number.NEGATIVE_INFINITY;
  const dots = rows.map(({ timeS, readingC }) => {
    if (readingC === undefined || x(timeS) - lastX < dotsApart) return '';
    lastX = x(timeS);
    return `M${x(timeS).toFixed(1)} ${y(readingC).toFixed(1)}h0`;
  });
  return <path className="readings" d={dots.join('')} />;
}

/** What was believed: a line with its band; thinner where no reading came for a while, and the model stood alone. */
export function Belief({ rows, layout: { x, y } }: Filling & { readonly rows: readonly Row[] }) {
  const band = area<Row>()
    .digits(1)
    .x((row) => x(row.timeS))
    .y0((row) => y(row.believedC.low))
    .y1((row) => y(row.believedC.high))(rows as Row[]);
  const path = (part: readonly Row[]) =>
    line<Row>()
      .digits(1)
      .x((row) => x(row.timeS))
      .y((row) => y(row.believedC.mid))(part as Row[]) ?? '';
  const mid = path(rows);
  return (
    <g>
      <path className="believed-band" d={band ?? ''} />
      <path className="course-halo believed-halo" d={mid} />
      {stretches(rows).map(({ rows: part, alone }) => (
        <path key={part[0]?.timeS} className={alone ? 'course model-only' : 'course'} d={path(part)} />
      ))}
    </g>
  );
}

/** Longest gap between readings over which the line still counts as followed, s. */
const followedS = 45;

/** Stretches with readings, and those between readings that lie further apart. */
function stretches(rows: readonly Row[]): { readonly rows: readonly Row[]; readonly alone: boolean }[] {
  const found: { rows: Row[]; alone: boolean }[] = [];
  let sinceS = rows[0]?.timeS ?? 0;
  let waiting: Row[] = [];
  const close = (alone: boolean) => {
    const last = found.at(-1);
    if (last?.alone === alone) last.rows.push(...waiting);
    else if (waiting.length > 0) found.push({ rows: [...(last ? last.rows.slice(-1) : []), ...waiting], alone });
    waiting = [];
  };
  for (const row of rows) {
    waiting.push(row);
    if (row.readingC === undefined) continue;
    close(row.timeS - sinceS > followedS);
    sinceS = row.timeS;
  }
  close((rows.at(-1)?.timeS ?? 0) - sinceS > followedS);
  return found;
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

/** As many points as a narrow panel can show. */
const panelPoints = 240;

/** What can't be seen, over time: the middle, and between what 8 in 10 of the twin's pans lie. */
export function BeliefPanels({ rows, layout }: Filling & { readonly rows: readonly Row[] }) {
  const every = Math.max(1, Math.ceil(rows.length / panelPoints));
  const drawn = rows.filter((_, i) => i % every === 0 || i === rows.length - 1);
  const { x } = layout;
  return (
    <g>
      {layout.panels.map((panel) => {
        const of = (row: Row) => row.unseen[panel.name];
        const band = area<Row>()
          .digits(1)
          .x((row) => x(row.timeS))
          .y0((row) => panelY(panel, of(row).low))
          .y1((row) => panelY(panel, of(row).high));
        const mid = line<Row>()
          .digits(1)
          .x((row) => x(row.timeS))
          .y((row) => panelY(panel, of(row).mid));
        return (
          <PanelFrame key={panel.name} panel={panel} layout={layout}>
            <path className="believed-band" d={band(drawn) ?? ''} />
            <path className="course" d={mid(drawn) ?? ''} />
          </PanelFrame>
        );
      })}
    </g>
  );
}

/** Stirring, as a short wave above the rail of the dial. */
export function Stirs({ stirredS, layout }: Filling & { readonly stirredS: readonly number[] }) {
  const { x, plotBottom } = layout;
  const waves = stirredS.map((timeS) => `M${x(timeS) - 5} ${plotBottom + 3}q2.5-4 5 0t5 0`).join('');
  return <path className="stirs" d={waves} />;
}
