/** The pan line: a cook as time and temperature, painted with the syrup's computed colour, with steps, deeds and bands. */
import { memo } from 'react';
import { drawEveryS } from '../../../core/planning/forecast.ts';
import type { TemperatureUnit } from '../temperature.ts';
import { Axes } from './Axes.tsx';
import { BehindLine } from './BehindLine.tsx';
import { Clip } from './Clip.tsx';
import { Deeds } from './Deeds.tsx';
import type { Layout } from './layout.ts';
import { Panels } from './Panels.tsx';
import { PrintRibbon } from './PrintRibbon.tsx';
import { bandPath, linePath } from './paths.ts';
import { type Bands, drawnEveryS, type Picture } from './picture.ts';
import { Ribbon } from './Ribbon.tsx';
import { StepBands, StepNames } from './Steps.tsx';
import './panLine.css';

interface PanLineProps {
  readonly picture: Picture;
  readonly bands: Bands | undefined;
  readonly layout: Layout;
  readonly unit: TemperatureUnit;
  /** On paper the ribbon is hatched: it must do without colour. */
  readonly hatched?: boolean;
  /** Another plan, drawn behind this one. */
  readonly behind?: Picture | undefined;
}

export const PanLine = memo(function PanLine({ picture, bands, layout, unit, hatched, behind }: PanLineProps) {
  const { x, y, left, right, plotTop, plotBottom } = layout;
  const band = bands?.forecast.bands.readingC;
  const clip = { left, right, top: plotTop - 2, bottom: plotBottom };
  const course = linePath(picture.traces.readingC, drawnEveryS, x, y);
  const bandLine = (column: Float64Array) => linePath(column, drawEveryS, x, y);
  return (
    <g className="pan-line">
      <Axes layout={layout} unit={unit} />
      <StepNames picture={picture} layout={layout} />
      <Clip {...clip}>
        {band && <path className="band" d={bandPath(band.low, band.high, drawEveryS, x, y)} />}
        {hatched ? (
          <PrintRibbon picture={picture} layout={layout} />
        ) : (
          <Ribbon picture={picture} edges={bands?.edges} layout={layout} />
        )}
        {band && (
          <g className="band-edges">
            <path className="halo" d={bandLine(band.low)} />
            <path className="dashes" d={bandLine(band.low)} />
            <path className="dashes" d={bandLine(band.high)} />
          </g>
        )}
      </Clip>
      <StepBands picture={picture} layout={layout} unit={unit} />
      <Clip {...clip}>
        {behind && <BehindLine behind={behind} layout={layout} />}
        <path className="course-halo" d={course} />
        <path className="course main-course" d={course} />
      </Clip>
      <Deeds picture={picture} layout={layout} />
      <Panels picture={picture} bands={bands} layout={layout} behind={behind} />
    </g>
  );
});
