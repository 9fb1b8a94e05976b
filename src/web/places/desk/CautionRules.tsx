/** Cautions as rules beside what they are about, each with its id. */
import type { Caution } from '../../../core/planning/handling.ts';

export function CautionRules({ of }: { readonly of: readonly Caution[] }) {
  return (
    <ul className="rules">
      {of.map(({ id, head, text }) => (
        <li key={id} data-statement={id}>
          <strong>{head}</strong> {text}
        </li>
      ))}
    </ul>
  );
}
