/** Keeps what is drawn within a rectangle. */
import { type ReactNode, useId } from 'react';

interface ClipProps {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly children: ReactNode;
}

export function Clip({ left, right, top, bottom, children }: ClipProps) {
  const id = useId();
  return (
    <g>
      <clipPath id={id}>
        <rect x={left} y={top} width={Math.max(0, right - left)} height={bottom - top} />
      </clipPath>
      <g clipPath={`url(#${id})`}>{children}</g>
    </g>
  );
}
