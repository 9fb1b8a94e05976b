/** A drop of the sugar on a white plate, in its computed colour. */
import { useId } from 'react';
import { dropRings, type Tone } from './syrupPaint.ts';

export function Drop({ tone, size = 48 }: { readonly tone: Tone; readonly size?: number }) {
  const id = useId();
  return (
    <svg className="drop" viewBox="0 0 48 48" width={size} height={size} aria-hidden="true">
      <defs>
        <radialGradient id={id}>
          {dropRings(tone).map(({ out, colour }) => (
            <stop key={out} offset={out} stopColor={colour} />
          ))}
        </radialGradient>
      </defs>
      <circle cx="24" cy="24" r="23.5" fill="#fff" stroke="var(--rule-strong)" />
      <circle cx="24" cy="24" r="19" fill={`url(#${id})`} />
    </svg>
  );
}
