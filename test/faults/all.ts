// Every fault that is made, in the order of the table.
import { clockJump } from './clockJump.ts';
import { damagedRow } from './damagedRow.ts';
import type { Fault } from './fault.ts';
import { fullDisk } from './fullDisk.ts';
import { killedBackup } from './killedBackup.ts';
import { killedCheckpoint } from './killedCheckpoint.ts';
import { killedMigration } from './killedMigration.ts';
import { killedRestart } from './killedRestart.ts';
import { killedWriting } from './killedWriting.ts';
import { oneSyncEach, syncError } from './syncError.ts';
import { tornLog } from './tornLog.ts';

/** With all the other tests. The others need what is built, and have tests of their own among those. */
export const quickFaults: readonly Fault[] = [
  killedMigration,
  killedBackup,
  killedCheckpoint,
  tornLog,
  oneSyncEach,
  syncError,
  fullDisk,
  damagedRow,
  clockJump,
];

export const allFaults: readonly Fault[] = [killedWriting, ...quickFaults, killedRestart];
