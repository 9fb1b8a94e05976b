/** One label, drawn in mm. Black on white whatever the theme: it is paper. */
import { encode } from 'uqr';
import { shortDayText } from '../../../parts/dayText.ts';
import { ebcOf, percent, srmOf } from '../../../parts/figures.ts';
import { massWords, type Shown } from '../shown.ts';
import { fitted } from './fitted.ts';
import { type Size, sizes } from './sizes.ts';

interface LabelProps {
  readonly shown: Shown;
  readonly size: Size;
  readonly address: string;
  /** A further copy says nothing new to a screen reader. */
  readonly hidden: boolean;
}

export function Label({ shown, size, address, hidden }: LabelProps) {
  const { widthMm, heightMm, qrMm } = sizes[size];
  const { lot } = shown;
  const small = size === 'tag';
  const pad = small ? 2.5 : 4;
  const text = small ? 2.6 : size === 'jar' ? 3.1 : 4;
  const nameSize = small ? 3.8 : size === 'jar' ? 5.4 : 7.5;
  const besideMm = widthMm - qrMm - 2 * pad - 2;
  const lines = linesOf(shown);
  const name = fitted(lot.name, widthMm - 2 * pad, nameSize, small ? 1 : 2);
  const top = pad + nameSize * 0.9;
  const rule = top + (name.length - 1) * nameSize * 1.1 + 1.6;
  const first = rule + text + 1.2;
  const shownLines = lines.slice(0, Math.floor((heightMm - pad - first) / (text * 1.3)) + 1);
  return (
    <svg
      className="label"
      viewBox={`0 0 ${widthMm} ${heightMm}`}
      style={{ width: `${widthMm}mm`, height: `${heightMm}mm` }}
      role={hidden ? undefined : 'img'}
      aria-hidden={hidden || undefined}
      aria-label={hidden ? undefined : `Label: ${lot.name}; ${lines.join('; ')}; code to ${address}`}
    >
      <rect
        x="0.2"
        y="0.2"
        width={widthMm - 0.4}
        height={heightMm - 0.4}
        rx="1.5"
        fill="#fff"
        stroke="#000"
        strokeWidth="0.3"
      />
      {name.map((line, i) => (
        <text key={line} x={pad} y={top + i * nameSize * 1.1} fontSize={nameSize} fontWeight="700">
          {line}
        </text>
      ))}
      <path d={`M${pad} ${rule} H${widthMm - pad}`} stroke="#000" strokeWidth="0.35" />
      {shownLines.map((line, i) => (
        <text key={line} x={pad} y={first + i * text * 1.3} fontSize={text}>
          {fitted(line, besideMm, text, 1)[0]}
        </text>
      ))}
      <Qr address={address} x={widthMm - pad - qrMm} y={heightMm - pad - qrMm} mm={qrMm} />
    </svg>
  );
}

/** What matters without the server, the most needed first. */
function linesOf({ id, lot, known }: Shown): readonly string[] {
  const { figures, madeKg } = known;
  const alkali = lot.alkali;
  return [
    shortDayText(lot.madeAt),
    `${massWords(madeKg.mid)}, ${lot.form === 'hard' ? 'hard' : 'syrup'}`,
    `${ebcOf(figures.a430.mid)} EBC, ${srmOf(figures.a430.mid)} SRM`,
    `water ${percent(figures.waterShare.mid)}`,
    `inverted ${percent(figures.inverted.mid)}`,
    ...(alkali && alkali.gramsPerKgSucrose > 0
      ? [`${alkali.gramsPerKgSucrose.toFixed(1)} g/kg ${alkali.substance === 'sodiumHydroxide' ? 'NaOH' : 'Ca(OH)2'}`]
      : []),
    lot.form === 'hard' ? 'keep sealed, dry' : 'keep closed',
    `lot ${id.slice(0, 8)}`,
    ...(lot.origin === 'rehearsed' ? ['REHEARSAL: not a sugar'] : []),
  ];
}

/** Error correction M: a smudge of 15 % is read over. Of the four modules of quiet around it (ISO/IEC 18004) the label's margin gives two. */
function Qr({
  address,
  x,
  y,
  mm,
}: {
  readonly address: string;
  readonly x: number;
  readonly y: number;
  readonly mm: number;
}) {
  const { data, size } = encode(address, { ecc: 'M', border: 2 });
  const cells = data.flatMap((row, down) =>
    row.flatMap((dark, across) => (dark ? [`M${across} ${down}h1v1h-1z`] : [])),
  );
  return (
    <g transform={`translate(${x} ${y}) scale(${mm / size})`} shapeRendering="crispEdges">
      <rect width={size} height={size} fill="#fff" />
      <path d={cells.join('')} fill="#000" />
    </g>
  );
}
