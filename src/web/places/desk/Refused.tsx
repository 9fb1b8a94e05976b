/** In place of a plan: why there is none, and what would be allowed. */
import type { Refusal } from '../../../core/advice/limits.ts';
import { DangerMark } from '../../parts/DangerMark.tsx';

export function Refused({ refusals }: { readonly refusals: readonly Refusal[] }) {
  return (
    <section className="refused" role="alert" aria-label="No plan">
      <DangerMark />
      <div>
        <h2>No plan for this: it could hurt somebody</h2>
        <ul className="rules">
          {refusals.map(({ limit, message }) => (
            <li key={limit}>
              {sentence(message)} <span className="small quiet">{limit}</span>
            </li>
          ))}
        </ul>
      </div>
    </section>
  );
}

/** The core's clause as a sentence. */
export function sentence(clause: string): string {
  return `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`;
}
