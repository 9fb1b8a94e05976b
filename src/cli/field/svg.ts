/** A field as a drawing, as the Desk draws it: grains of its sugars, lines of equal taste, both levers, and what the marks mean. */
import { likelyHueIndex } from '../../core/colour/pool.ts';
import { a430FromEbc } from '../../core/colour/scales.ts';
import type { Look } from '../../core/planning/aim.ts';
import { cssOf, grainsFor, painted } from '../../core/planning/field/drawn/grains.ts';
import { type Layout, layoutFor } from '../../core/planning/field/drawn/layout.ts';
import { leverWords } from '../../core/planning/field/drawn/leverWords.ts';
import { type Planes, planesOf } from '../../core/planning/field/drawn/planes.ts';
import { lineStyles, type Named, tasteLines } from '../../core/planning/field/drawn/tasteLines.ts';
import type { Lever } from '../../core/planning/field/levers.ts';
import { type TasteName, tasteNames } from '../../core/planning/taste.ts';
import type { CookedField } from './cooked.ts';
import { png } from './png.ts';

const width = 760;
const margin = { side: 24, head: 34, legend: 132 };
/** From grain to grain, px; and pixels for each px of the drawing. */
const pitch = 3.5;
const pixels = 2;
/** Room that the name of a limit needs, px. */
const nameRoom = 18;

const style = `
text { font: 13px 'Atkinson Hyperlegible Next', system-ui, sans-serif; fill: #201b17; }
.title { font-size: 17px; font-weight: 700; }
.name { font-size: 15px; font-weight: 700; }
.quiet { fill: #5a524b; }
.frame { fill: none; stroke: #777; }
.limit { font-weight: 700; stroke: #efebe5; stroke-width: 5; paint-order: stroke; }
.under { fill: none; stroke: #1b1714; stroke-opacity: .5; stroke-width: 3.5; stroke-linejoin: round; }
.over { fill: none; stroke: #fff; stroke-width: 1.4; stroke-linejoin: round; }
.line { fill: #fff; stroke: #1b1714; stroke-opacity: .8; stroke-width: 3.5; stroke-linejoin: round; paint-order: stroke; font-weight: 700; }
.sample { stroke: #201b17; stroke-width: 2; }
.arrow { fill: none; stroke: #201b17; stroke-width: 1.6; stroke-linecap: round; stroke-linejoin: round; }`;

/** Water in a drop of the key: a few per cent more or less don't show. */
const usualWater = 0.05;

const looks: Readonly<Record<Look, string>> = { glass: '1 cm of a 10 % solution', drop: 'a drop on a white plate' };

/** @returns a whole SVG document */
export function fieldSvg(field: CookedField, look: Look): string {
  const { spec, lines, kit } = field;
  const layout = layoutFor(width, spec);
  const planes = planesOf(spec, lines);
  const named = tasteLines(planes, tasteNames, layout);
  const size = { width: layout.width + 2 * margin.side, height: layout.height + margin.head + margin.legend };
  const { left, top, plotWidth, plotHeight } = layout;
  const place = `x="${left}" y="${top}" width="${plotWidth}" height="${plotHeight}"`;
  const title = `Every sugar by the ${spec.request.route} route, cooked with ${kit.name}`;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${size.width}" height="${size.height}" viewBox="0 0 ${size.width} ${size.height}">
<title>${escaped(title)}</title>
<style>${style}</style>
<defs><pattern id="none" width="6.5" height="6.5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="6.5" height="6.5" fill="#efebe5"/><rect width="1.5" height="6.5" fill="#b0aca6"/></pattern></defs>
<rect width="${size.width}" height="${size.height}" fill="#fff"/>
<text class="title" x="${margin.side}" y="30">${escaped(title)}</text>
<g transform="translate(${margin.side} ${margin.head})">
<rect ${place} fill="url(#none)"/>
<image ${place} preserveAspectRatio="none" href="data:image/png;base64,${grainsPng(field, planes, look, layout).toString('base64')}"/>
${named.map(drawn).join('\n')}
${axes(spec, layout)}
${legend(look, planes, named, layout)}
</g>
</svg>
`;
}

const short = (length: number): string => String(Number(length.toFixed(1)));

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
}

/** The paint, with the uncertainty of each colour in its grains; clear where nothing is made. */
function grainsPng({ band }: CookedField, planes: Planes, look: Look, { plotWidth, plotHeight }: Layout): Buffer {
  const [wide, high] = [plotWidth * pixels, plotHeight * pixels];
  const paint = painted(grainsFor(wide, high, pitch * pixels), planes, band(), look);
  return png({ width: wide, height: high, data: new Uint8Array(paint.buffer) });
}

function drawn({ path, dash, name, label }: Named): string {
  const dashes = dash && ` stroke-dasharray="${dash}"`;
  const named =
    label &&
    `<text class="line" x="${short(label.x)}" y="${short(label.y)}" dy="4.5" text-anchor="middle" transform="rotate(${short(label.turn)} ${short(label.x)} ${short(label.y)})">${name}</text>`;
  return `<path class="under" d="${path}"/><path class="over" d="${path}"${dashes}/>${named ?? ''}`;
}

const axisName = (lever: Lever): string => {
  const { name, unit } = leverWords[lever];
  return `${name}, ${unit === 'C' ? '°C' : unit}`;
};

function axes({ x, y }: CookedField['spec'], layout: Layout): string {
  const { left, top, plotWidth, plotHeight, xTicks, yTicks, limitX, limitY } = layout;
  const [right, floor] = [left + plotWidth, top + plotHeight];
  const past = (px: number, py: number, turn: number) =>
    `<text class="limit" x="${short(px)}" y="${short(py)}" dy="4.5" text-anchor="middle" transform="rotate(${turn} ${short(px)} ${short(py)})">past the limit</text>`;
  return [
    right - limitX > nameRoom ? past((limitX + right) / 2, top + plotHeight / 2, -90) : '',
    limitY - top > nameRoom ? past((left + limitX) / 2, (top + limitY) / 2, 0) : '',
    `<rect class="frame" x="${left}" y="${top}" width="${plotWidth}" height="${plotHeight}"/>`,
    ...xTicks.map(
      ({ text, at }) =>
        `<path class="frame" d="M${short(at)} ${floor}v5"/><text x="${short(at)}" y="${floor + 19}" text-anchor="middle">${text}</text>`,
    ),
    ...yTicks.map(
      ({ text, at }) =>
        `<path class="frame" d="M${left} ${short(at)}h-5"/><text x="${left - 9}" y="${short(at + 4)}" text-anchor="end">${text}</text>`,
    ),
    `<path class="arrow" d="M${left - 25} ${top - 12}v-11m-4 4l4-4l4 4"/><text class="name" x="${left - 15}" y="${top - 12}">${axisName(y.lever)}</text>`,
    `<path class="arrow" d="M${right - 11} ${floor + 37}h11m-4-4l4 4l-4 4"/><text class="name" x="${right - 17}" y="${floor + 42}" text-anchor="end">${axisName(x.lever)}</text>`,
  ].join('\n');
}

/** Colours of the key, from straw to nearly black, EBC. */
const keyEbc = [5, 12, 25, 45, 80, 120, 180, 260];

function legend(look: Look, planes: Planes, named: readonly Named[], { left, plotWidth, height }: Layout): string {
  const room = plotWidth / tasteNames.length;
  const samples = tasteNames.map((taste, i) => {
    const at = short(left + i * room);
    const has = named.some(({ name }) => name.startsWith(taste));
    const sample = `<path class="sample" d="M${at} ${height + 31}h30" stroke-dasharray="${lineStyles[taste].dash || 'none'}"/>`;
    return `${has ? sample : ''}<text x="${short(left + i * room + (has ? 36 : 0))}" y="${height + 35}">${has ? taste : spanOf(taste, planes)}</text>`;
  });
  const box = plotWidth / keyEbc.length;
  const key = keyEbc.map((ebc, i) => {
    const a430 = a430FromEbc(ebc);
    const paint = cssOf(look, { a430, hueIndex: likelyHueIndex(a430), waterShare: usualWater });
    const at = left + i * box;
    return `<rect class="frame" x="${short(at)}" y="${height + 50}" width="26" height="18" style="fill:${paint}"/><text x="${short(at + 32)}" y="${height + 64}">${ebc} EBC</text>`;
  });
  return `<text class="quiet" x="${left}" y="${height + 12}">Lines of taste, indices from 0 to 10; and the colour, as ${looks[look]}:</text>
${samples.join('')}
${key.join('')}
<text class="quiet" x="${left}" y="${height + 92}">Each grain is one cook that its spot may turn out as: where grains differ, the colour is unsure. Hatched: past a limit</text>
<text class="quiet" x="${left}" y="${height + 110}">of safety, or not done within 6 hours. Tastes follow the model and are assumed, not measured.</text>`;
}

/** Of a taste that no line tells: how much of it there is over the field. */
function spanOf(taste: TasteName, { taste: planes }: Planes): string {
  const known = planes[taste].values.filter((value) => !Number.isNaN(value));
  const [low, high] = [Math.min(...known).toFixed(1), Math.max(...known).toFixed(1)];
  return low === high ? `${taste} ${low}` : `${taste} ${low} to ${high}`;
}
