/** Buttons that keep a kit, and the choice when it was changed elsewhere in the meantime. */
import type { KitKeeping } from './useKitKeeping.ts';

export function KeepKit({ keeping }: { readonly keeping: KitKeeping }) {
  const { changed, isSaved, message, conflict, save, saveAsNew, takeTheirs, keepMine } = keeping;
  return (
    <div className="keeping">
      {conflict ? (
        <div className="note" role="alert">
          <p>
            <strong>This kit was changed elsewhere in the meantime.</strong> It is at version {conflict.version} now, as
            “{conflict.kit.name}”. Your changes are still here and not saved.
          </p>
          <div className="buttons">
            <button type="button" onClick={keepMine}>
              Save mine over it
            </button>
            <button type="button" onClick={takeTheirs}>
              Take theirs
            </button>
          </div>
        </div>
      ) : (
        <div className="buttons">
          <button type="button" onClick={save} disabled={isSaved && !changed}>
            Save kit
          </button>
          {isSaved && (
            <button type="button" className="plain" onClick={saveAsNew}>
              Save as another
            </button>
          )}
        </div>
      )}
      <p className="small" role="status">
        {message && !changed ? message : isSaved && changed ? 'Changes not saved yet.' : message}
      </p>
    </div>
  );
}
