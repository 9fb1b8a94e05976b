/** In place of a plan: why there is none, and what would be allowed. */
import type { Refusal } from '../../../core/advice/limits.ts';
import { DangerMark } from '../../parts/DangerMark.tsx';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { sentence } from './sentence.ts';

interface RefusedProps {
  readonly refusals: readonly Refusal[];
  /** What a field is called on the page, where the fields are. */
  readonly labelOf?: (field: string) => string;
}

export function Refused({ refusals, labelOf }: RefusedProps) {
  const { unit } = useTemperatureUnit();
  return (
    <section className="refused" role="alert" aria-label="No plan">
      <DangerMark />
      <div>
        <h2>No plan for this: it could hurt somebody</h2>
        <ul className="rules">
          {refusals.map(({ limit, field, message }) => (
            <li key={limit}>
              {labelOf && <strong>{labelOf(field)}. </strong>}
              {sentence(message, unit)} <span className="small quiet">{limit}</span>
            </li>
          ))}
        </ul>
      </div>
    </section>
  );
}
