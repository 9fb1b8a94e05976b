/** Saving, rehearsing and printing, and whether the server is there for it. */
import { Link } from 'wouter';
import { Unreached } from '../../parts/Unreached.tsx';
import type { Reach } from '../../records/reach.ts';
import type { Notice } from './useKeptPlans.ts';

interface ActionsProps {
  readonly saved: boolean;
  readonly saving: boolean;
  readonly possible: boolean;
  readonly reach: Reach;
  readonly notice: Notice | undefined;
  readonly onSave: () => void;
}

export function Actions({ saved, saving, possible, reach, notice, onSave }: ActionsProps) {
  return (
    <div className="actions screen">
      <div className="buttons">
        <button
          type="button"
          className="main"
          onClick={onSave}
          disabled={!possible || saved || saving || reach !== 'reached'}
        >
          {saved && possible ? 'Saved' : 'Save plan'}
        </button>
        {possible && (
          <Link className="button" href="/stove">
            Rehearse this plan
          </Link>
        )}
        <button type="button" onClick={() => window.print()} disabled={!possible}>
          Print
        </button>
      </div>
      <div className="notice" role="status">
        {reach !== 'reached' && (
          <p>
            <Unreached reach={reach} so="everything here still computes, but saving is not possible now." />
          </p>
        )}
        {notice && (
          <p>
            <span>{notice.says}</span>
            {notice.undo && (
              <button type="button" className="plain" onClick={notice.undo.run}>
                {notice.undo.name}
              </button>
            )}
          </p>
        )}
      </div>
    </div>
  );
}
