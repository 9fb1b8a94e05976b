/** The pan line as it fills up: readings, what the twin believes, the syrup's colour, deeds, the plan, and five minutes ahead. */
import { memo, useMemo } from 'react';
import { spansBegun } from '../../../core/pan/spansBegun.ts';
import { Axes } from '../../parts/panLine/Axes.tsx';
import { Clip } from '../../parts/panLine/Clip.tsx';
import { Deeds } from '../../parts/panLine/Deeds.tsx';
import { layoutFor } from '../../parts/panLine/layout.ts';
import { linePath } from '../../parts/panLine/paths.ts';
import { StepBands, StepNames } from '../../parts/panLine/Steps.tsx';
import { useWidth } from '../../parts/panLine/useWidth.ts';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import type { Cooked } from './cooked.ts';
import { AheadBand, Belief, BeliefPanels, Readings, Stirs } from './Filling.tsx';
import { LiveRibbon } from './LiveRibbon.tsx';
import '../../parts/panLine/panLine.css';

/** Room ahead of now, and the steps in which the time axis grows, s. */
const aheadS = 300;
const growS = 900;

export const CookLine = memo(
  function CookLine({ cooked }: { readonly cooked: Cooked }) {
    const { unit } = useTemperatureUnit();
    const [frame, width] = useWidth();
    const { planned, rows, deeds, entries, ahead, reveal } = cooked;
    const stirredS = entries.flatMap(({ kind, timeS }) => (kind === 'stir' ? [timeS] : []));
    const nowS = rows.at(-1)?.timeS ?? 0;
    const axisS = Math.max(planned.endS, Math.ceil((nowS + aheadS) / growS) * growS);
    const hottestC = Math.max(planned.hottestC, ...rows.map(({ believedC }) => believedC.mid));
    const rails = planned.begun.amounts.alkali ? 3 : 2;
    const layout = useMemo(() => layoutFor(width, axisS, hottestC, rails), [width, axisS, hottestC, rails]);
    const steps = spansBegun(planned.begun.steps, deeds, reveal ? nowS : nowS + aheadS);
    const picture = { plan: planned.begun, steps, deeds };
    const { x, y, left, right, plotTop, plotBottom } = layout;
    return (
      <figure className="filling" aria-labelledby="filling">
        <h2 id="filling">Pan line</h2>
        <div ref={frame} className="pan-frame">
          <svg width={layout.width} height={layout.height} role="img" aria-label={summaryOf(cooked)}>
            <g className="pan-line">
              <Axes layout={layout} unit={unit} />
              <StepNames picture={picture} layout={layout} />
              <Clip left={left} right={right} top={plotTop - 2} bottom={plotBottom}>
                <LiveRibbon rows={rows} layout={layout} />
                <path className="planned-course" d={linePath(planned.courseC, 1, x, y)} />
                {ahead && !reveal && <AheadBand ahead={ahead} layout={layout} />}
              </Clip>
              <StepBands picture={picture} layout={layout} unit={unit} />
              <Clip left={left} right={right} top={plotTop - 2} bottom={plotBottom}>
                <Belief rows={rows} layout={layout} />
                <Readings rows={rows} layout={layout} />
              </Clip>
              <Deeds picture={picture} layout={layout} />
              <Stirs stirredS={stirredS} layout={layout} />
              <BeliefPanels rows={rows} layout={layout} />
            </g>
          </svg>
        </div>
        <figcaption className="small quiet">
          Dots: readings, as many as have room. Line with grey band: what the twin believes, 8 in 10. Dashed: the next 5
          minutes if nothing is done, 8 in 10. Dotted: the plan. The ribbon is the syrup’s estimated colour as a film of
          1 mm. Below: what can’t be seen, as the twin believes it, 8 in 10.
        </figcaption>
      </figure>
    );
  },
  (before, after) =>
    before.cooked.rows === after.cooked.rows &&
    before.cooked.deeds === after.cooked.deeds &&
    before.cooked.ahead === after.cooked.ahead &&
    before.cooked.entries.length === after.cooked.entries.length &&
    before.cooked.reveal === after.cooked.reveal,
);

function summaryOf({ rows, deeds }: Cooked): string {
  const readings = rows.filter(({ readingC }) => readingC !== undefined);
  const minutes = ((rows.at(-1)?.timeS ?? 0) / 60).toFixed(0);
  const last = readings.at(-1)?.readingC;
  const shown = last === undefined ? 'none was read yet' : `the last reading is ${last.toFixed(0)} °C`;
  return `${readings.length} readings and ${deeds.length} deeds in ${minutes} minutes; ${shown}.`;
}
