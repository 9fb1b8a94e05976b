/** The syrup itself: a ribbon hung below the temperature, in three strands of computed colour: the pale end, the middle, the dark end. */
import { useId } from 'react';
import type { Layout } from './layout.ts';
import { strandPath } from './paths.ts';
import { drawnEveryS, type Paint, type Picture, type RibbonEdges } from './picture.ts';

interface RibbonProps {
  readonly picture: Picture;
  readonly edges: RibbonEdges | undefined;
  readonly layout: Layout;
}

const strands = [
  { name: 'pale', from: 0, to: 0.28 },
  { name: 'mid', from: 0.28, to: 0.72 },
  { name: 'dark', from: 0.72, to: 1 },
] as const;

export function Ribbon({ picture, edges, layout }: RibbonProps) {
  const id = useId();
  const { x, y, plotBottom, ribbonDepth } = layout;
  const paints = { pale: edges?.pale ?? picture.ribbon, mid: picture.ribbon, dark: edges?.dark ?? picture.ribbon };
  const shape = (from: number, to: number) =>
    strandPath(picture.traces.readingC, drawnEveryS, x, y, {
      from: from * ribbonDepth,
      to: to * ribbonDepth,
      floor: plotBottom,
    });
  return (
    <g>
      {strands.map(({ name, from, to }) => (
        <g key={name}>
          <Paints id={`${id}${name}`} paints={paints[name]} layout={layout} />
          {/* A hair of overlap, so that no seam shows between strands of one colour. */}
          <path d={shape(from, Math.min(1, to + 0.01))} fill={`url(#${id}${name})`} />
        </g>
      ))}
      <path className="ribbon-edge" d={shape(0, 1)} />
    </g>
  );
}

function Paints({ id, paints, layout }: { id: string; paints: readonly Paint[]; layout: Layout }) {
  const { x, left, right } = layout;
  return (
    <linearGradient id={id} gradientUnits="userSpaceOnUse" x1={left} x2={right} y1="0" y2="0">
      {paints.map(({ atS, colour }) => (
        <stop key={atS} offset={(x(atS) - left) / (right - left)} stopColor={colour} />
      ))}
    </linearGradient>
  );
}
