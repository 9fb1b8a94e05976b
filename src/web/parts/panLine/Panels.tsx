/** The small panels below the ribbon: one quantity each, the expected course and the 10-90 % band. */
import type { ReactNode } from 'react';
import { drawEveryS } from '../../../core/planning/forecast.ts';
import { Clip } from './Clip.tsx';
import { type Layout, type Panel, panelFacts, panelY } from './layout.ts';
import { bandPath, linePath } from './paths.ts';
import { type Bands, drawnEveryS, type Picture } from './picture.ts';

interface PanelsProps {
  readonly picture: Picture;
  readonly bands: Bands | undefined;
  readonly layout: Layout;
  readonly behind: Picture | undefined;
}

export function Panels({ picture, bands, layout, behind }: PanelsProps) {
  const { x } = layout;
  return (
    <g>
      {layout.panels.map((panel) => {
        const { name } = panel;
        const band = bands?.forecast.bands[name];
        const y = (value: number) => panelY(panel, value);
        return (
          <PanelFrame key={name} panel={panel} layout={layout}>
            {band && <path className="band" d={bandPath(band.low, band.high, drawEveryS, x, y)} />}
            {behind && <path className="course behind-course" d={linePath(behind.traces[name], drawnEveryS, x, y)} />}
            <path className="course" d={linePath(picture.traces[name], drawnEveryS, x, y)} />
          </PanelFrame>
        );
      })}
    </g>
  );
}

interface PanelFrameProps {
  readonly panel: Panel;
  readonly layout: Layout;
  readonly children: ReactNode;
}

/** A panel's title and grid, and what is drawn inside of it. */
export function PanelFrame({ panel, layout, children }: PanelFrameProps) {
  const { left, right } = layout;
  const { name, top, bottom } = panel;
  return (
    <g>
      <text className="panel-name" x={left} y={top - 6}>
        {panelFacts[name].title}
      </text>
      <Grid panel={panel} layout={layout} />
      <Clip left={left} right={right} top={top - 1} bottom={bottom + 1}>
        {children}
      </Clip>
    </g>
  );
}

function Grid({ panel, layout }: { readonly panel: Panel; readonly layout: Layout }) {
  const { name, y, bottom } = panel;
  const { left, right } = layout;
  const { ticks } = panelFacts[name];
  // On a low panel every other number is enough.
  const every = (bottom - panel.top) / ticks.length < 12 ? 2 : 1;
  return (
    <g>
      {ticks.map((tick, i) => (
        <g key={tick}>
          <line className="grid" x1={left} x2={right} y1={y(tick)} y2={y(tick)} />
          {i % every === 0 && (
            <text className="tick" x={left - 8} y={y(tick) + 4} textAnchor="end">
              {tick}
            </text>
          )}
        </g>
      ))}
      <line className="floor" x1={left} x2={right} y1={bottom} y2={bottom} />
    </g>
  );
}
