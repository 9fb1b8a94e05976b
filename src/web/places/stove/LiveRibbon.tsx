/** The syrup so far: a ribbon below what the twin believes, in its middle colour at each time. */
import { area } from 'd3-shape';
import { useId } from 'react';
import type { Layout } from '../../parts/panLine/layout.ts';
import type { Row } from './view.ts';

/** Colours along the ribbon: one each so many readings is enough. */
const paintEvery = 6;

export function LiveRibbon({ rows, layout }: { readonly rows: readonly Row[]; readonly layout: Layout }) {
  const id = useId();
  const { x, y, plotBottom, ribbonDepth } = layout;
  const first = rows[0];
  const last = rows.at(-1);
  if (!first || !last || first === last) return null;
  const [from, to] = [x(first.timeS), x(last.timeS)];
  const shape = area<Row>()
    .digits(1)
    .x(({ timeS }) => x(timeS))
    .y0(({ believedC }) => y(believedC.mid))
    .y1(({ believedC }) => Math.min(plotBottom, y(believedC.mid) + ribbonDepth))(rows as Row[]);
  return (
    <g>
      <linearGradient id={id} gradientUnits="userSpaceOnUse" x1={from} x2={to} y1="0" y2="0">
        {rows
          .filter((row, i) => i % paintEvery === 0 || row === last)
          .map(({ timeS, colour }) => (
            <stop key={timeS} offset={(x(timeS) - from) / (to - from)} stopColor={colour} />
          ))}
      </linearGradient>
      <path d={shape ?? ''} fill={`url(#${id})`} />
      <path className="ribbon-edge" d={shape ?? ''} />
    </g>
  );
}
