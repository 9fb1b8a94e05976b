/** What was noted, each of which can be struck out again. */
interface NotedProps {
  readonly label: string;
  readonly texts: readonly string[];
  readonly onStrike: (index: number) => void;
}

export function Noted({ label, texts, onStrike }: NotedProps) {
  return (
    <div className="noted">
      <p className="noted-count" aria-live="polite">
        {label}: {texts.length}
      </p>
      <ol>
        {texts.map((text, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: readings have no identity but their place
          <li key={i}>
            {text}
            <button type="button" className="plain" aria-label={`Strike out ${text}`} onClick={() => onStrike(i)}>
              ×
            </button>
          </li>
        ))}
      </ol>
    </div>
  );
}
