/** The syrup so far: a ribbon below what the twin believes, in its middle colour at each time. */
import { area } from 'd3-shape';
import { useId } from 'react';
import type { Layout } from '../../parts/panLine/layout.ts';
import { ribbonStops } from './ribbonStops.ts';
import type { Row } from './view.ts';

export function LiveRibbon({ rows, layout }: { readonly rows: readonly Row[]; readonly layout: Layout }) {
  const id = useId();
  const { x, y, plotBottom, ribbonDepth } = layout;
  const stops = ribbonStops(rows);
  const [first, last] = [stops[0], stops.at(-1)];
  if (!first || !last) return null;
  const shape = area<Row>()
    .digits(1)
    .x(({ timeS }) => x(timeS))
    .y0(({ believedC }) => y(believedC.mid))
    .y1(({ believedC }) => Math.min(plotBottom, y(believedC.mid) + ribbonDepth))(rows as Row[]);
  return (
    <g>
      <linearGradient id={id} gradientUnits="userSpaceOnUse" x1={x(first.timeS)} x2={x(last.timeS)} y1="0" y2="0">
        {stops.map(({ timeS, offset, colour }) => (
          <stop key={timeS} offset={offset} stopColor={colour} />
        ))}
      </linearGradient>
      <path d={shape ?? ''} fill={`url(#${id})`} />
      <path className="ribbon-edge" d={shape ?? ''} />
    </g>
  );
}
