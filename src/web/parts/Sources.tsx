/** Where what is said comes from, one tap away. */
import type { Sourced } from '../../core/advice/safety.ts';

interface SourcesProps {
  readonly of: readonly Sourced[];
}

export function Sources({ of }: SourcesProps) {
  return (
    <details className="small quiet">
      <summary>Where this comes from</summary>
      <ul>
        {of.map(({ id, source, date, region }) => (
          <li key={id}>
            {id}: {source}. Written down {date}; region: {region}.
          </li>
        ))}
      </ul>
    </details>
  );
}
