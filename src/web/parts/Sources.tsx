/** Where what is said comes from, one tap away. */
interface SourcesProps {
  readonly of: readonly { readonly id: string; readonly source: string }[];
}

export function Sources({ of }: SourcesProps) {
  return (
    <details className="small quiet">
      <summary>Where this comes from</summary>
      <ul>
        {of.map(({ id, source }) => (
          <li key={id}>
            {id}: {source}
          </li>
        ))}
      </ul>
    </details>
  );
}
