/** The time pointed at, through all panels, with a mark on each line. */
import { type Layout, panelY } from './layout.ts';
import type { Moment } from './moment.ts';

export function CrossHair({ moment, layout }: { readonly moment: Moment; readonly layout: Layout }) {
  const { x, y, plotTop, panels } = layout;
  const at = x(moment.timeS);
  return (
    <g className="cross-hair">
      <line x1={at} x2={at} y1={plotTop} y2={panels.at(-1)?.bottom} />
      <circle cx={at} cy={y(moment.values.readingC)} r="5" />
      {panels.map((panel) => (
        <circle key={panel.name} cx={at} cy={panelY(panel, moment.values[panel.name])} r="4" />
      ))}
    </g>
  );
}
