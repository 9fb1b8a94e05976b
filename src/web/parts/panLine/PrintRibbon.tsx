/** The ribbon without colour: each step hatched the closer the darker its sugar, with the colour's number at its end. */
import { useId } from 'react';
import { hatchingGap } from '../../../core/colour/hatching.ts';
import { ebcFromA430 } from '../../../core/colour/scales.ts';
import { ebcOf } from '../figures.ts';
import type { Layout } from './layout.ts';
import { strandPath } from './paths.ts';
import { drawnEveryS, type Picture } from './picture.ts';

/** A step narrower than this has room for its number alone, px. */
const unitRoom = 58;

export function PrintRibbon({ picture, layout }: { readonly picture: Picture; readonly layout: Layout }) {
  const id = useId();
  const { x, y, plotBottom, ribbonDepth, height } = layout;
  const shape = strandPath(picture.traces.readingC, drawnEveryS, x, y, { from: 0, to: ribbonDepth, floor: plotBottom });
  return (
    <g>
      {picture.steps.map(({ startS, endS }, i) => {
        const a430 = picture.ends[i]?.a430 ?? 0;
        const gap = hatchingGap(a430);
        const key = `${id}${i}`;
        return (
          <g key={key}>
            {gap > 0 && (
              <pattern id={key} width={gap} height={gap} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
                <path d={`M0 0V${gap}`} stroke="#000" strokeWidth="1.6" />
              </pattern>
            )}
            <clipPath id={`${key}c`}>
              <rect x={x(startS)} y="0" width={Math.max(0, x(endS) - x(startS))} height={height} />
            </clipPath>
            <path d={shape} fill={gap > 0 ? `url(#${key})` : 'none'} clipPath={`url(#${key}c)`} />
            <text className="ebc-name" x={x(endS) - 4} y={plotBottom - 6} textAnchor="end">
              {ebcFromA430(a430) >= 1 && `${ebcOf(a430)}${x(endS) - x(startS) > unitRoom ? ' EBC' : ''}`}
            </text>
          </g>
        );
      })}
      <path className="ribbon-edge" d={shape} />
    </g>
  );
}
