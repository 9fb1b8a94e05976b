/** What became of an act, with a way back where there is one. It stands in a status of the place. */
export interface Notice {
  readonly says: string;
  readonly undo?: (() => void) | undefined;
}

export function NoticeLine({ notice }: { readonly notice: Notice | undefined }) {
  return (
    notice && (
      <p>
        <span>{notice.says}</span>
        {notice.undo && (
          <button type="button" className="plain" onClick={notice.undo}>
            Undo
          </button>
        )}
      </p>
    )
  );
}
