/** One thing that a plan comes to: its name, a figure, and what the figure stands for. */
import type { ReactNode } from 'react';

interface RowProps {
  readonly name: string;
  readonly figure: string | undefined;
  readonly children?: ReactNode;
}

export function Row({ name, figure, children }: RowProps) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        <strong>{figure ?? '\u00a0'}</strong>
        <div className="account-says">{children || '\u00a0'}</div>
      </dd>
    </div>
  );
}
