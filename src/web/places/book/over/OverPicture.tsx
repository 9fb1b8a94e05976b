/**
 * Lines of several cooks over one time axis, and below them a lane of colour each. Dragging moves one group of the picture and draws
 * nothing anew, so that ten cooks go along smoothly.
 */
import { scaleLinear } from 'd3-scale';
import { useMemo, useState } from 'react';
import { Clip } from '../../../parts/panLine/Clip.tsx';
import { useWidth } from '../../../parts/panLine/useWidth.ts';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { inUnit } from '../../../parts/temperature.ts';
import { OverLine } from './OverLine.tsx';
import { type Alignment, type Overlaid, zeroOf } from './overlaid.ts';
import { usePan } from './usePan.ts';

interface OverPictureProps {
  readonly cooks: readonly Overlaid[];
  readonly alignment: Alignment;
}

const [left, plotTop, plotHeight, laneHeight] = [46, 12, 300, 26];
const [coldestC, kneeC, hottestC] = [20, 100, 165];
const ticksC = [20, 60, 100, 120, 140, 160];
const zooms = [1, 1.5, 2.5, 4, 7];
const nudgePx = 120;

export function OverPicture({ cooks, alignment }: OverPictureProps) {
  const [frame, width] = useWidth();
  const [zoom, setZoom] = useState(0);
  const right = width - 10;
  const plotBottom = plotTop + plotHeight;
  const axis = plotBottom + 22;
  const height = axis + 8 + cooks.length * laneHeight;

  const { startS, endS } = useMemo(() => spanOf(cooks, alignment), [cooks, alignment]);
  const scale = ((right - left) / Math.max(60, endS - startS)) * (zooms[zoom] ?? 1);
  const x = (timeS: number) => left + (timeS - startS) * scale;
  const y = useMemo(
    () => scaleLinear([coldestC, kneeC, hottestC], [plotBottom, plotBottom - plotHeight * 0.24, plotTop]).clamp(true),
    [plotBottom],
  );
  const farthest = Math.min(0, right - left - (endS - startS) * scale);

  const pan = usePan(farthest);
  const zoomBy = (by: number) => setZoom(Math.min(zooms.length - 1, Math.max(0, zoom + by)));

  const minutes = ticksOf(startS / 60, endS / 60, (60 * scale) / 56);
  return (
    <figure className="over-figure">
      <div ref={frame} className="over-frame" {...pan.drag}>
        <svg width={width} height={height} role="img" aria-label={`Temperatures of ${cooks.length} cooks over time`}>
          <Degrees y={y} right={right} />
          {/* Half a figure beyond the first minute. */}
          <Clip left={left - 5} right={right} top={0} bottom={height}>
            <g ref={pan.moving} transform={`translate(${pan.offsetPx} 0)`}>
              {minutes.map((minute) => (
                <text key={minute} x={x(minute * 60)} y={axis - 4} textAnchor="middle">
                  {minute}
                </text>
              ))}
              {alignment !== 'clock' && <line className="over-zero" x1={x(0)} x2={x(0)} y1={plotTop} y2={plotBottom} />}
              {cooks.map((cook, i) => (
                <OverLine
                  key={cook.id}
                  cook={cook}
                  number={i + 1}
                  zeroS={zeroOf(cook, alignment)}
                  x={x}
                  y={y}
                  lane={{ top: axis + 8 + i * laneHeight, height: laneHeight - 8 }}
                />
              ))}
            </g>
          </Clip>
          {cooks.map((cook, i) => (
            <text
              key={cook.id}
              x={left - 8}
              y={axis + 8 + i * laneHeight + 14}
              textAnchor="end"
              className="over-number"
            >
              {i + 1}
            </text>
          ))}
        </svg>
      </div>
      <figcaption className="over-caption small quiet">
        <span>
          Minutes {alignment === 'clock' ? 'from the cold pan' : 'from when the step began'}. Below, each cook’s colour
          as a film of 1 mm.
        </span>
        <span className="book-buttons">
          <button type="button" disabled={farthest === 0} onClick={() => pan.moveBy(nudgePx)}>
            Earlier
          </button>
          <button type="button" disabled={farthest === 0} onClick={() => pan.moveBy(-nudgePx)}>
            Later
          </button>
          <button type="button" disabled={zoom === 0} onClick={() => zoomBy(-1)}>
            Smaller
          </button>
          <button type="button" disabled={zoom === zooms.length - 1} onClick={() => zoomBy(1)}>
            Larger
          </button>
        </span>
      </figcaption>
    </figure>
  );
}

function Degrees({ y, right }: { readonly y: (celsius: number) => number; readonly right: number }) {
  const { unit } = useTemperatureUnit();
  return ticksC.map((c) => (
    <g key={c}>
      <line className="over-grid" x1={left} x2={right} y1={y(c)} y2={y(c)} />
      <text x={left - 8} y={y(c) + 4} textAnchor="end">
        {inUnit(c, unit).toFixed(0)}
        {c === 100 && '°'}
      </text>
    </g>
  ));
}

function spanOf(cooks: readonly Overlaid[], alignment: Alignment) {
  const starts = cooks.map((cook) => -zeroOf(cook, alignment));
  const ends = cooks.map((cook) => cook.summary.endS - zeroOf(cook, alignment));
  return { startS: Math.min(0, ...starts), endS: Math.max(60, ...ends) };
}

/** Minutes so far apart that their numbers have room. */
function ticksOf(from: number, to: number, perMinute: number): readonly number[] {
  const step = [1, 2, 5, 10, 15, 20, 30, 60].find((each) => each * perMinute >= 1) ?? 60;
  const first = Math.ceil(from / step);
  return Array.from({ length: Math.max(0, Math.floor(to / step) - first + 1) }, (_, i) => (first + i) * step);
}
