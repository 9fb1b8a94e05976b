/** Keeping the glass, beginning another, taking it away, and what became of it. */
import { NoticeLine } from '../../parts/NoticeLine.tsx';
import { Unreached } from '../../parts/Unreached.tsx';
import type { GlassDraft } from './draft.ts';
import type { Keeping } from './useKept.ts';

interface KeepingActsProps {
  readonly keeping: Keeping;
  readonly draft: GlassDraft;
  readonly possible: boolean;
}

export function KeepingActs({ keeping, draft, possible }: KeepingActsProps) {
  const { kept, busy, reach, notice, conflict } = keeping;
  const can = possible && !busy && reach === 'reached';
  return (
    <div className="glass-actions">
      <div className="glass-buttons">
        <button type="button" className="main" disabled={!can || kept} onClick={keeping.keep}>
          {kept ? 'Kept' : draft.base ? 'Keep the changes' : 'Keep this glass'}
        </button>
        {draft.base && (
          <button type="button" disabled={!can} onClick={keeping.keepAsNew}>
            Keep as another
          </button>
        )}
        <button type="button" onClick={keeping.empty}>
          New beer
        </button>
        {draft.base && (
          <button type="button" disabled={busy || reach !== 'reached'} onClick={keeping.remove}>
            Take this glass away
          </button>
        )}
      </div>
      <div className="glass-notice" role="status">
        {reach !== 'reached' && (
          <p>
            <Unreached reach={reach} so="everything here still computes, but keeping is not possible now." />
          </p>
        )}
        <NoticeLine notice={notice} />
        {conflict && (
          <div className="glass-note">
            <p>“{conflict.glass.name}” was changed elsewhere in the meantime.</p>
            <div className="glass-buttons">
              <button type="button" onClick={keeping.takeTheirs}>
                Show theirs
              </button>
              <button type="button" onClick={keeping.keepMine}>
                Keep mine instead
              </button>
            </div>
          </div>
        )}
      </div>
    </div>
  );
}
