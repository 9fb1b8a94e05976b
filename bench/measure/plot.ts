/** Times over sizes as small logarithmic pictures side by side (SVG): on such axes a power of the size is a straight line. */
import { scaleLog } from 'd3-scale';
import { line } from 'd3-shape';

export interface Panel {
  readonly title: string;
  readonly across: string;
  readonly points: readonly { readonly size: number; readonly ms: number }[];
}

const [width, height, left, bottom, top] = [300, 240, 52, 44, 34];

/** Power of the size that the times follow: slope of the least squares line through the logarithms. */
export function exponentOf({ points }: Panel): number {
  const xs = points.map(({ size }) => Math.log(size));
  const ys = points.map(({ ms }) => Math.log(ms));
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const [mx, my] = [mean(xs), mean(ys)];
  const slope = xs.reduce((sum, x, i) => sum + (x - mx) * (ys[i] - my), 0);
  return slope / xs.reduce((sum, x) => sum + (x - mx) ** 2, 0);
}

export function plotted(panels: readonly Panel[]): string {
  const all = panels.map((panel, i) => `<g transform="translate(${i * width} 0)">${panelSvg(panel)}</g>`);
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${panels.length * width} ${height}" font-family="system-ui, sans-serif" font-size="11">
<title>Times over sizes, on logarithmic axes</title>
<rect width="100%" height="100%" fill="#fff"/>
${all.join('\n')}
</svg>
`;
}

function panelSvg(panel: Panel): string {
  const { points, title, across } = panel;
  const sizes = points.map(({ size }) => size);
  const times = points.map(({ ms }) => ms);
  const x = scaleLog([Math.min(...sizes), Math.max(...sizes)], [left, width - 16]);
  const y = scaleLog([Math.min(...times) / 1.5, Math.max(...times) * 1.5], [height - bottom, top]);
  const path = line<Panel['points'][number]>(
    ({ size }) => x(size),
    ({ ms }) => y(ms),
  )(points);
  const marks = points.map(
    ({ size, ms }) =>
      `<circle cx="${x(size).toFixed(1)}" cy="${y(ms).toFixed(1)}" r="3"/><text x="${x(size).toFixed(1)}" y="${height - bottom + 15}" text-anchor="middle">${short(size)}</text><text x="${left - 6}" y="${(y(ms) + 4).toFixed(1)}" text-anchor="end">${ms.toPrecision(2)}</text>`,
  );
  return `<text x="${left}" y="18" font-weight="bold">${title}</text><path d="M${left} ${top}V${height - bottom}H${width - 10}" fill="none" stroke="#857d74"/><path d="${path}" fill="none" stroke="#241f1b" stroke-width="2"/>${marks.join('')}<text x="${(left + width) / 2}" y="${height - 10}" text-anchor="middle">${across}</text>`;
}

const short = (size: number): string => (size >= 1000 ? `${size / 1000}k` : String(size));
