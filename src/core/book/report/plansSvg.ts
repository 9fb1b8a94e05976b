/** Two plans on one pan line, as a picture of its own: the first with its colour, the second behind it with long dashes and open rings. */
import { courseColour } from '../../colour/courseColour.ts';
import { filmDepthCm, poolColour } from '../../colour/pool.ts';
import { ebcFromA430 } from '../../colour/scales.ts';
import type { Course } from '../../pan/course.ts';
import type { ModelValues } from '../../pan/physics.ts';
import { type Traces, tracesOf } from '../../planning/forecast.ts';
import { endOf, ends, reading, steps } from './courseLine.ts';
import { escaped } from './markup.ts';
import { axes, type Frame, frameFor, type Painted, railsOf, ribbon, size } from './panFrame.ts';
import { given } from './score.ts';

export interface LaidPlan {
  readonly name: string;
  /** Its central course, a row each second. */
  readonly course: Course;
  readonly values: ModelValues;
}

const legendDepth = 26;
const rails = railsOf(size);
/** Room on the left for the figures of fonts wider than most. */
const margin = 12;

const style = `
svg { background: #fff; }
text { fill: #201b17; font: 11px system-ui, sans-serif; }
.step { font-weight: 650; }
.grid { stroke: #ccc; stroke-width: .6; }
.mark { stroke: #777; stroke-width: .8; }
.halo { fill: none; stroke: #fff; stroke-width: 3.5; }
.middle { fill: none; stroke: #201b17; stroke-width: 1.6; }
.behind { stroke-dasharray: 11 5; stroke-width: 1.3; }
.ring { fill: #fff; stroke: #201b17; stroke-width: 1.3; }
.deed { fill: #201b17; }`;

/** @returns a whole SVG document */
export function plansSvg([first, second]: readonly [LaidPlan, LaidPlan]): string {
  const laid = [first, second].map((plan) => ({ ...plan, traces: tracesOf(plan.course, plan.values) }));
  const [front, behind] = laid;
  const frame = frameFor(
    Math.max(...laid.map(({ course }) => endOf(course))),
    Math.max(...laid.map(({ course }) => course.hottestC)),
  );
  const [width, height] = [margin + size.width, size.height + legendDepth];
  const title = `Two plans on one pan line: ${first.name}, and behind it ${second.name}`;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="${-margin} 0 ${width} ${height}">
<title>${escaped(title)}</title>
<style>${style}</style>
<rect x="${-margin}" width="${width}" height="${height}" fill="#fff"/>
${axes(frame)}
${coloured(front.course, front, frame)}
${steps(front.course, frame)}
${reading(behind.traces, frame, 'middle behind')}
${ends(behind.course, behind.traces, frame)}
${reading(front.traces, frame, 'middle')}
${givenOn(front.course, frame, rails.dial, 'middle')}
${givenOn(behind.course, frame, rails.given, 'middle behind')}
${legend(laid)}
</svg>
`;
}

function coloured(course: Course, { traces, values }: { traces: Traces; values: ModelValues }, frame: Frame): string {
  const { hueIndex } = courseColour(course, values.absorptivity420);
  const paint = (row: number): Painted => ({
    timeS: course.timeS[row],
    celsius: traces.readingC[row],
    colour: poolColour(
      { a430: traces.a430[row], hueIndex: hueIndex[row], waterShare: traces.waterShare[row] },
      filmDepthCm,
    ),
  });
  return ribbon([...course.timeS.keys()], paint, frame);
}

/** Water and alkali on a rail of the plan's own, which begins with a piece of its line. */
function givenOn({ deeds }: Course, { x }: Frame, at: number, kind: string): string {
  const marks = deeds.map(({ timeS, deed }) => given(deed.kind, x(timeS), at));
  return `<path class="${kind}" d="M4 ${at}h28"/>${marks.join('')}`;
}

function legend(laid: readonly { readonly name: string; readonly traces: Traces }[]): string {
  const y = size.height + 12;
  const names = laid.map(({ name, traces }, i) => {
    const ebc = ebcFromA430(traces.a430.at(-1) ?? 0);
    const left = size.left + i * 240;
    const ring = i === 0 ? '' : `<circle class="ring" cx="${left + 24}" cy="${y - 4}" r="3.5"/>`;
    const says = `${name.length > 24 ? `${name.slice(0, 23)}…` : name}, ${ebc.toFixed(0)} EBC`;
    return `<path class="middle${i === 0 ? '' : ' behind'}" d="M${left} ${y - 4}h30"/>${ring}<text x="${left + 36}" y="${y}">${escaped(says)}</text>`;
  });
  const left = size.left + 480;
  return `${names.join('')}<circle class="deed" cx="${left}" cy="${y - 4}" r="2.6"/><text x="${left + 8}" y="${y}">spoonful</text><path class="deed" d="M${left + 80} ${y + 1}l-4.5-10h9z"/><text x="${left + 90}" y="${y}">part of the alkali</text>`;
}
