/** A list of cautions under a signal word, each naming its id; the sources are one tap away. */
import type { ReactNode } from 'react';
import type { Caution } from '../../../../core/planning/handling.ts';
import { DangerMark } from '../../../parts/DangerMark.tsx';
import { Sources } from '../../../parts/Sources.tsx';

interface CautionsProps {
  readonly title: string;
  readonly cautions: readonly Caution[];
  readonly children?: ReactNode;
}

export function Cautions({ title, cautions, children }: CautionsProps) {
  const id = cautions[0]?.id;
  return (
    <section className="set-cautions" aria-labelledby={`${id}-title`}>
      <div className="set-head">
        <DangerMark />
        <h3 id={`${id}-title`}>{title}</h3>
        {children}
      </div>
      <ul>
        {cautions.map(({ id, head, text }) => (
          <li key={id} data-statement={id}>
            <strong>{head}</strong> {text}
          </li>
        ))}
      </ul>
      <Sources of={cautions} />
    </section>
  );
}
