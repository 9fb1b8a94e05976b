/** The pan line of a cook up to a time: readings, what the twin believed then, what is known of it now, deeds, spoon tests, alarms. */
import { area, line } from 'd3-shape';
import { memo, useMemo } from 'react';
import type { AlarmChange } from '../../../../core/advice/alarms/engine.ts';
import type { HindsightRow } from '../../../../core/book/hindsight.ts';
import { Axes } from '../../../parts/panLine/Axes.tsx';
import { Clip } from '../../../parts/panLine/Clip.tsx';
import { Deeds } from '../../../parts/panLine/Deeds.tsx';
import { type Layout, layoutFor, panelY } from '../../../parts/panLine/layout.ts';
import { StepBands, StepNames } from '../../../parts/panLine/Steps.tsx';
import { useWidth } from '../../../parts/panLine/useWidth.ts';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { Belief, BeliefPanels, Stirs } from '../../stove/Filling.tsx';
import { LiveRibbon } from '../../stove/LiveRibbon.tsx';
import type { Row } from '../../stove/view.ts';
import { Alarms, Readings, SpoonTests } from './Marks.tsx';
import type { Cooked } from './useCook.ts';
import '../../../parts/panLine/panLine.css';

interface CookPictureProps {
  readonly cooked: Cooked;
  readonly rows: readonly Row[];
  readonly hindsight: readonly HindsightRow[] | undefined;
  readonly alarms: readonly AlarmChange[];
  readonly atS: number;
}

export const CookPicture = memo(function CookPicture({ cooked, rows, hindsight, alarms, atS }: CookPictureProps) {
  const { unit } = useTemperatureUnit();
  const [frame, width] = useWidth();
  const { state, doings } = cooked;
  const begun = state.begun?.body;
  const { endS, shown } = doings;
  const hottestC = useMemo(() => shown.reduce((most, { valueC }) => Math.max(most, valueC), 135), [shown]);
  const rails = begun?.amounts.alkali ? 3 : 2;
  const layout = useMemo(() => layoutFor(width, endS, hottestC, rails), [width, endS, hottestC, rails]);
  if (!begun) return null;
  const past = rows.filter(({ timeS }) => timeS <= atS);
  const deeds = doings.deeds.filter(({ timeS }) => timeS <= atS);
  const stirredS = state.deeds.flatMap(({ kind, timeS }) => (kind === 'stir' && timeS <= atS ? [timeS] : []));
  const picture = { plan: begun, steps: doings.spans, deeds };
  const { left, right, plotTop, plotBottom, x, panels } = layout;
  const now = x(atS);
  return (
    <div ref={frame} className="pan-frame">
      <svg
        width={layout.width}
        height={layout.height}
        role="img"
        aria-label={`Pan line: ${shown.length} readings and ${doings.deeds.length} deeds in ${(endS / 60).toFixed(0)} minutes.`}
      >
        <g className="pan-line">
          <Axes layout={layout} unit={unit} />
          <StepNames picture={picture} layout={layout} />
          <Clip left={left} right={right} top={plotTop - 2} bottom={plotBottom}>
            <LiveRibbon rows={past} layout={layout} />
          </Clip>
          <StepBands picture={picture} layout={layout} unit={unit} />
          <Clip left={left} right={right} top={plotTop - 2} bottom={plotBottom}>
            <Belief rows={past} layout={layout} />
            <Readings shown={shown} atS={atS} layout={layout} />
            {hindsight && <Known rows={hindsight} layout={layout} />}
            <SpoonTests state={state} shown={shown} atS={atS} layout={layout} />
            <Alarms alarms={alarms} atS={atS} layout={layout} />
          </Clip>
          <Deeds picture={picture} layout={layout} />
          <Stirs stirredS={stirredS} layout={layout} />
          <BeliefPanels rows={past} layout={layout} />
          {hindsight && <KnownPanels rows={hindsight} layout={layout} />}
          {atS < endS && <line className="replay-now" x1={now} x2={now} y1={plotTop} y2={panels.at(-1)?.bottom} />}
        </g>
      </svg>
    </div>
  );
});

interface KnownProps {
  readonly rows: readonly HindsightRow[];
  readonly layout: Layout;
}

function Known({ rows, layout: { x, y } }: KnownProps) {
  const middle = line<HindsightRow>()
    .digits(1)
    .x(({ timeS }) => x(timeS))
    .y(({ believedC }) => y(believedC.mid))([...rows]);
  return <path className="known-line" d={middle ?? ''} />;
}

/** What is known now of what can't be seen: an outline over what was believed then. */
function KnownPanels({ rows, layout }: KnownProps) {
  const { x, left, right, panels } = layout;
  return panels.map((panel) => {
    const band = area<HindsightRow>()
      .digits(1)
      .x(({ timeS }) => x(timeS))
      .y0(({ unseen }) => panelY(panel, unseen[panel.name].low))
      .y1(({ unseen }) => panelY(panel, unseen[panel.name].high))([...rows]);
    return (
      <Clip key={panel.name} left={left} right={right} top={panel.top} bottom={panel.bottom}>
        <path className="known-band" d={band ?? ''} />
      </Clip>
    );
  });
}
