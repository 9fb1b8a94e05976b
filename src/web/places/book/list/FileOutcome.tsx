/** What became of a file that was chosen: being read, taken, or refused and why. */
import type { ReactNode } from 'react';
import { WrongMark } from '../../../parts/Field.tsx';

interface FileOutcomeProps {
  readonly isRead: boolean;
  /** Why it was refused; undefined if it was not. */
  readonly refused: string | undefined;
  /** What is said once it is done. */
  readonly children: ReactNode;
}

export function FileOutcome({ isRead, refused, children }: FileOutcomeProps) {
  return (
    <>
      <div role="status">{isRead ? 'The file is being read.' : children}</div>
      <div role="alert">
        {!isRead && refused !== undefined && (
          <p>
            <WrongMark /> {refused}
          </p>
        )}
      </div>
    </>
  );
}
