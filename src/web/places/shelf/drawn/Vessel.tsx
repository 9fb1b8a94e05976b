/** A lot as it stands on the shelf: syrup in a jar, filled as far as there is any, or shards on a sheet of paper, as many as are left. */
import { useId } from 'react';
import { dropDepthCm } from '../../../../core/colour/drop.ts';
import { poolColour, type Tone } from '../../../parts/syrupPaint.ts';

export interface VesselProps {
  readonly form: 'hard' | 'syrup';
  readonly tone: Tone;
  /** 0 to 1. */
  readonly left: number;
  /** Written on its paper tag. */
  readonly tag: string;
}

export function Vessel(props: VesselProps) {
  return (
    <svg className="vessel" viewBox="0 0 120 132" aria-hidden="true">
      {props.form === 'syrup' ? <Jar {...props} /> : <Heap {...props} />}
    </svg>
  );
}

const jarBody = 'M30 34 q-8 4 -8 14 v68 q0 12 12 12 h52 q12 0 12 -12 v-68 q0 -10 -8 -14 z';
const bottom = 126;
const brim = 42;

function Jar({ tone, left, tag }: VesselProps) {
  const id = useId();
  const level = bottom - left * (bottom - brim);
  return (
    <>
      <defs>
        <linearGradient id={`${id}-syrup`}>
          {across.map((out) => (
            <stop key={out} offset={(1 + out) / 2} stopColor={poolColour(tone, depthAt(out))} />
          ))}
        </linearGradient>
        <clipPath id={`${id}-inside`}>
          <path d={jarBody} transform="translate(60 81) scale(0.93 0.95) translate(-60 -81)" />
        </clipPath>
      </defs>
      <path d={jarBody} fill="#fff" fillOpacity="0.85" />
      {left > 0 && (
        <g clipPath={`url(#${id}-inside)`}>
          <rect x="20" y={level} width="80" height={bottom - level + 4} fill={`url(#${id}-syrup)`} />
          <ellipse cx="60" cy={level} rx="37" ry="3" fill={poolColour(tone, 0.12)} />
        </g>
      )}
      <path className="glass-line" d={jarBody} />
      <path className="glass-shine" d="M30 54 v50" />
      <path className="lid" d="M30 14 h60 q3 0 3 3 v12 q0 3 -3 3 h-60 q-3 0 -3 -3 v-12 q0 -3 3 -3 z" />
      <path className="lid-line" d="M27 23 h66" />
      {tag !== '' && <Tag x={60} y={90} text={tag} />}
    </>
  );
}

/** A small jar's chord of syrup: thick in the middle, thin at the sides. */
const across = [-1, -0.9, -0.6, 0, 0.6, 0.9, 1] as const;
function depthAt(out: number): number {
  return dropDepthCm * (0.15 + 0.85 * Math.sqrt(1 - out * out));
}

/** Flat pieces of broken candy, heaped: corners of each upper face, and its thickness, cm. The last are the first to go. */
const shards: readonly { readonly at: string; readonly depthCm: number }[] = [
  { at: '6,111 26,100 46,106 40,118 14,120', depthCm: 0.2 },
  { at: '62,112 84,99 106,108 98,119 74,120', depthCm: 0.18 },
  { at: '34,114 50,102 72,108 66,119 44,121', depthCm: 0.24 },
  { at: '16,98 38,87 52,95 46,105 22,107', depthCm: 0.12 },
  { at: '54,100 74,86 96,97 82,106 62,107', depthCm: 0.15 },
  { at: '32,87 50,75 70,83 62,94 40,95', depthCm: 0.09 },
  { at: '44,74 58,62 76,71 66,80 50,81', depthCm: 0.06 },
];
/** Its broken edge is seen below its face, and lets more light through. */
const edge = { height: 4.5, depthCm: 0.03 };

function Heap({ tone, left, tag }: VesselProps) {
  const pieces = left <= 0 ? 0 : Math.max(1, Math.round(left * shards.length));
  const edgeColour = poolColour(tone, edge.depthCm);
  return (
    <>
      <path className="sheet" d="M10 114 h98 l8 13 h-114 z" />
      {shards.slice(0, pieces).map(({ at, depthCm }) => (
        <g key={at} className="shard">
          <polygon points={at} transform={`translate(0 ${edge.height})`} fill={edgeColour} />
          <polygon points={at} fill={poolColour(tone, depthCm)} />
        </g>
      ))}
      {tag !== '' && <Tag x={86} y={122} text={tag} />}
    </>
  );
}

/** A paper tag with the day on it. */
function Tag({ x, y, text }: { readonly x: number; readonly y: number; readonly text: string }) {
  return (
    <>
      <rect className="tag" x={x - 27} y={y - 14} width="54" height="20" rx="1" />
      <text className="tag-text" x={x} y={y} textAnchor="middle">
        {text}
      </text>
    </>
  );
}
