/** What to mind, the gravest first, each with where it comes from. */
import type { GlassCaution } from '../../../core/beer/glassCautions.ts';

const order = ['strong warning', 'warning', 'note'] as const satisfies GlassCaution['level'][];

export function CautionList({ cautions }: { readonly cautions: readonly GlassCaution[] }) {
  const sorted = cautions.toSorted((a, b) => order.indexOf(a.level) - order.indexOf(b.level));
  return (
    <ul className="caution-list">
      {sorted.map(({ id, level, text, source }) => (
        <li key={`${id} ${text}`} data-level={level}>
          {level !== 'note' && <strong className="level">{level}</strong>} {text}
          <span className="source">{source}</span>
        </li>
      ))}
    </ul>
  );
}
