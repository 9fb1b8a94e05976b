/** A field as a drawing: a square for each sugar, lines of equal taste, and both levers with their figures. */
import type { Look } from '../../core/planning/aim.ts';
import { contour, type Segment } from '../../core/planning/field/contours.ts';
import { type Axis, axisValue } from '../../core/planning/field/levers.ts';
import type { TasteName } from '../../core/planning/taste.ts';
import type { CookedField } from './cooked.ts';
import { leverNames } from './fieldOptions.ts';

const side = 14;
const margin = { left: 64, right: 16, top: 28, bottom: 46 };
/** Lines of each taste have their own dash. */
const lines: readonly { readonly taste: TasteName; readonly levels: readonly number[]; readonly dash: string }[] = [
  { taste: 'fruit', levels: [3, 4, 5], dash: 'none' },
  { taste: 'roast', levels: [3, 5, 7, 9], dash: '6 3' },
  { taste: 'burnt', levels: [1, 4], dash: '2 2' },
  { taste: 'alkali', levels: [3, 6], dash: '8 3 2 3' },
];

/** Lengths on the drawing: of the middle of a spot, by column and row from below. */
const across = (column: number): number => margin.left + (column + 0.5) * side;
const down = (rows: number, row: number): number => margin.top + (rows - row - 0.5) * side;
const short = (length: number): string => String(Number(length.toFixed(2)));

export function fieldSvg(field: CookedField, look: Look): string {
  const { spec, grid } = field;
  const [right, bottom] = [margin.left + grid.columns * side, margin.top + grid.rows * side];
  const title = `Sugars of the ${spec.request.route} route: ${leverNames[spec.x.lever]} against ${leverNames[spec.y.lever]}`;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${right + margin.right}" height="${bottom + margin.bottom}" font-family="sans-serif" font-size="11">
<title>${title}</title>
<defs><pattern id="none" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="6" height="6" fill="#e8e6e2"/><rect width="2" height="6" fill="#b0aca6"/></pattern></defs>
<rect width="100%" height="100%" fill="#fff"/>
<text x="${margin.left}" y="18">${title}</text>
<g shape-rendering="crispEdges">${squares(field, look)}</g>
${tasteLines(field)}
${figures(spec.x, (value, place) => `<text x="${short(across(place))}" y="${bottom + 16}" text-anchor="middle">${value}</text>`)}
${figures(spec.y, (value, place) => `<text x="${margin.left - 8}" y="${short(down(grid.rows, place) + 4)}" text-anchor="end">${value}</text>`)}
<text x="${(margin.left + right) / 2}" y="${bottom + 36}" text-anchor="middle">${leverNames[spec.x.lever]}</text>
<text transform="translate(16 ${(margin.top + bottom) / 2}) rotate(-90)" text-anchor="middle">${leverNames[spec.y.lever]}</text>
</svg>
`;
}

function squares({ grid }: CookedField, look: Look): string {
  const all: string[] = [];
  for (let row = 0; row < grid.rows; row++) {
    for (let column = 0; column < grid.columns; column++) {
      const seen = grid.spot(column, row)?.made?.[look];
      const fill = seen ? `rgb(${seen.r},${seen.g},${seen.b})` : 'url(#none)';
      const place = `x="${across(column) - side / 2}" y="${down(grid.rows, row) - side / 2}"`;
      all.push(`<rect ${place} width="${side}" height="${side}" fill="${fill}"/>`);
    }
  }
  return all.join('\n');
}

function tasteLines({ grid: { columns, rows, spot } }: CookedField): string {
  return lines
    .flatMap(({ taste, levels, dash }) =>
      levels.map((level) => {
        const value = (column: number, row: number): number => spot(column, row)?.made?.taste[taste] ?? Number.NaN;
        return tasteLine(contour(columns, rows, value, level), rows, `${taste} ${level}`, dash);
      }),
    )
    .join('\n');
}

/** Light over dark, so that it shows on every sugar; named once, in its middle. */
function tasteLine(pieces: readonly Segment[], rows: number, name: string, dash: string): string {
  const named = pieces[Math.floor(pieces.length / 2)];
  if (!named) return '';
  const place = (column: number, row: number): string => `${short(across(column))} ${short(down(rows, row))}`;
  const path = pieces.map(([x1, y1, x2, y2]) => `M${place(x1, y1)}L${place(x2, y2)}`).join('');
  const halo = 'stroke="#000" stroke-opacity=".5" stroke-width="3"';
  return `<path d="${path}" fill="none" ${halo}/>
<path d="${path}" fill="none" stroke="#fff" stroke-width="1.2" stroke-dasharray="${dash}"/>
<text x="${short(across(named[0]))}" y="${short(down(rows, named[1]))}" fill="#fff" ${halo} paint-order="stroke" text-anchor="middle">${name}</text>`;
}

/** Five figures along an axis. */
function figures(axis: Axis, drawn: (value: string, place: number) => string): string {
  return [0, 1, 2, 3, 4]
    .map((quarter) => {
      const place = (quarter * (axis.count - 1)) / 4;
      return drawn(String(Number(axisValue(axis, place).toPrecision(3))), place);
    })
    .join('\n');
}
