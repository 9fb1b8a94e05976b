/** Everything that is kept, as one file: out, and in again in the place of what is here. For keepers alone. */

import { useIsKeeper } from '../../../records/useStanding.ts';
import { FileOutcome } from './FileOutcome.tsx';
import { type PutIn, useWorkspaceFile } from './useWorkspaceFile.ts';

export function Workspace() {
  const isKeeper = useIsKeeper();
  const { mutate, data, isPending, reset } = useWorkspaceFile();
  if (isKeeper === undefined) return null;
  if (!isKeeper) return <p className="small quiet">Everything as one file is for a keeper’s device.</p>;
  return (
    <section className="workspace" aria-labelledby="workspace">
      <h2 id="workspace">Everything as one file</h2>
      <p className="small quiet" id="workspace-what">
        All kits, plans, cooks, lots and glasses. Devices that were let in, and passwords, are not in it. Put in again,
        here or at another Umberpan, it is the same to the letter.
      </p>
      <p>
        <a className="button" href="/api/workspace" download>
          Take everything out
        </a>
      </p>
      <label className="take-in-file">
        <span>Put everything in</span>
        <input
          type="file"
          accept=".json,application/json"
          aria-describedby="workspace-what"
          disabled={isPending}
          onChange={({ target }) => {
            const file = target.files?.[0];
            if (file) mutate({ file, mayReplace: false });
            // The same file may be chosen once more.
            target.value = '';
          }}
        />
      </label>
      {data?.kind === 'ask' && !isPending && (
        <Consent
          what={data.what}
          onReplace={() => mutate({ file: data.file, mayReplace: true })}
          onLeave={() => reset()}
        />
      )}
      <FileOutcome isRead={isPending} refused={data?.kind === 'refused' ? data.why : undefined}>
        <Done done={data} />
      </FileOutcome>
    </section>
  );
}

interface ConsentProps {
  readonly what: string;
  readonly onReplace: () => void;
  readonly onLeave: () => void;
}

function Consent({ what, onReplace, onLeave }: ConsentProps) {
  return (
    <fieldset className="consent">
      <legend>Replace everything that is here?</legend>
      <p>{what} All that is here goes, for every device. A backup of it is made in the data folder first.</p>
      <p className="acts">
        <button type="button" className="main" onClick={onReplace}>
          Replace everything
        </button>
        <button type="button" onClick={onLeave}>
          Keep what is here
        </button>
      </p>
    </fieldset>
  );
}

function Done({ done }: { readonly done: PutIn | undefined }) {
  if (done?.kind !== 'in') return null;
  if (!done.changed) return <p>✓ All of it was here already. Nothing was changed.</p>;
  return <p>✓ {done.rows} records are in: all that the file holds, and nothing else.</p>;
}
