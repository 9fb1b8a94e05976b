/** Where everything of a pan line stands: one time axis, and below each other the ribbon's plot, the deeds and the panels. */
import { scaleLinear, scaleLog } from 'd3-scale';
import { ebcFromA430 } from '../../../core/colour/scales.ts';

const panelNames = ['waterShare', 'ph', 'inverted', 'a430'] as const;
type PanelName = (typeof panelNames)[number];

interface PanelFacts {
  readonly title: string;
  readonly ticks: readonly number[];
  readonly domain: readonly [number, number];
  readonly log?: boolean;
  /** From the trace to what the axis counts. */
  readonly counted: (value: number) => number;
}

const share = (value: number): number => value * 100;
const same = (value: number): number => value;

export const panelFacts: Readonly<Record<PanelName, PanelFacts>> = {
  waterShare: { title: 'Water, %', domain: [0, 30], ticks: [0, 10, 20, 30], counted: share },
  ph: { title: 'Hot pH', domain: [2, 11], ticks: [3, 5, 7, 9], counted: same },
  inverted: { title: 'Inverted, %', domain: [0, 100], ticks: [0, 50, 100], counted: share },
  a430: {
    title: 'Colour, EBC of a 10 % solution',
    domain: [0.1, 1000],
    ticks: [1, 10, 100],
    log: true,
    counted: ebcFromA430,
  },
};

export interface Panel {
  readonly name: PanelName;
  readonly top: number;
  readonly bottom: number;
  readonly y: (value: number) => number;
}

export interface Layout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly plotTop: number;
  readonly plotBottom: number;
  readonly ribbonDepth: number;
  readonly rails: { readonly dial: number; readonly water: number; readonly alkali: number };
  readonly axes: readonly number[];
  readonly panels: readonly Panel[];
  readonly endS: number;
  readonly timeTicks: readonly number[];
  readonly temperatureTicks: readonly number[];
  readonly x: (timeS: number) => number;
  readonly timeAt: (x: number) => number;
  readonly y: (celsius: number) => number;
}

/** Below this all is warming up, and gets a quarter of the height. */
const kneeC = 100;
const coldestC = 20;
const labelRows = 38;
const axisHeight = 24;

/** For paper, where the picture shares one page with all that is to be done: without the panels, and lower the more steps there are. */
export function flatLayoutFor(width: number, endS: number, hottestC: number, railsCount: 2 | 3, steps: number): Layout {
  const layout = layoutFor(width, endS, hottestC, railsCount, steps > 5 ? 72 : 104);
  const axis = layout.axes[0] ?? layout.plotBottom;
  return { ...layout, panels: [], axes: [axis], height: axis + axisHeight };
}

export function layoutFor(width: number, endS: number, hottestC: number, railsCount: 2 | 3, flat?: number): Layout {
  const narrow = width < 560;
  const [left, right] = [46, width - 10];
  const railPitch = flat ? 15 : 21;
  const panelTitle = 20;
  const plotTop = labelRows;
  const plotBottom = plotTop + (flat ?? (narrow ? 210 : 290));
  const panelHeight = narrow ? 54 : 62;
  const axisEndMin = Math.ceil((endS / 60) * 1.05);
  const topC = Math.max(140, Math.ceil((hottestC + 4) / 5) * 5);

  const time = scaleLinear([0, axisEndMin * 60], [left, right]);
  const knee = plotBottom - (plotBottom - plotTop) * 0.24;
  const y = scaleLinear([coldestC, kneeC, topC], [plotBottom, knee, plotTop]);
  const firstPanel = plotBottom + 10 + railPitch * railsCount + axisHeight + 6;
  const panels = panelNames.map((name, i): Panel => {
    const top = firstPanel + i * (panelHeight + panelTitle) + panelTitle;
    const { domain, log } = panelFacts[name];
    const scale = (log ? scaleLog : scaleLinear)(domain, [top + panelHeight, top]).clamp(true);
    return { name, top, bottom: top + panelHeight, y: (value) => scale(value) };
  });
  const panelsEnd = panels.at(-1)?.bottom ?? firstPanel;
  return {
    width,
    height: panelsEnd + axisHeight + 4,
    left,
    right,
    plotTop,
    plotBottom,
    ribbonDepth: narrow || flat ? 38 : 54,
    rails: {
      dial: plotBottom + 10 + railPitch * 0.5,
      water: plotBottom + 10 + railPitch * 1.5,
      alkali: plotBottom + 10 + railPitch * 2.5,
    },
    axes: [plotBottom + 10 + railPitch * railsCount, panelsEnd],
    panels,
    endS,
    timeTicks: minuteTicks(axisEndMin, narrow ? 5 : 9),
    temperatureTicks: [20, 60, 100, 110, 120, 130, 140, 150, 160, 170].filter((tick) => tick <= topC),
    x: (timeS) => time(timeS),
    timeAt: (x) => Math.min(endS, Math.max(0, time.invert(x))),
    y: (celsius) => y(celsius),
  };
}

function minuteTicks(endMin: number, most: number): number[] {
  const step = [5, 10, 15, 20, 30, 60].find((each) => endMin / each <= most) ?? 60;
  return Array.from({ length: Math.floor(endMin / step) + 1 }, (_, i) => i * step);
}

/** A panel's height of a trace's value. */
export function panelY({ name, y }: Panel, value: number): number {
  const { counted, domain } = panelFacts[name];
  return y(Math.max(domain[0], counted(value)));
}
