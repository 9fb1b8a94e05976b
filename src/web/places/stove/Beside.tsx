/** A line of fixed height below the card: what was just noted, to be undone in one tap, or else the way to hold the picture. */
import type { AnyEntry } from '../../../core/log/corrections.ts';
import { clock } from '../../parts/figures.ts';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { useActs } from './acts.ts';
import type { Cook } from './deedWords.ts';
import { entryWords } from './entryWords.ts';

interface BesideProps {
  readonly last: AnyEntry | undefined;
  readonly cook: Cook;
  readonly timeS: number;
  /** When the picture that is held was taken, s. */
  readonly heldAtS: number | undefined;
  readonly onHold: () => void;
}

/** How long the last entry can be taken back in one tap, s. */
const undoS = 10;

export function Beside({ last, cook, timeS, heldAtS, onHold }: BesideProps) {
  const { unit } = useTemperatureUnit();
  const { correct } = useActs();
  const fresh = last && correct && timeS - last.timeS < undoS ? last : undefined;
  const says = fresh
    ? `Noted: ${entryWords(fresh, cook, unit)}`
    : heldAtS === undefined
      ? ''
      : `Held at ${clock(heldAtS / 60)}: it stands still, alarms go on.`;
  return (
    <p className="beside">
      <span role="status">{says}</span>
      {fresh ? (
        <button type="button" onClick={() => correct?.(fresh, null)}>
          Undo
        </button>
      ) : (
        <button type="button" aria-pressed={heldAtS !== undefined} onClick={onHold}>
          {heldAtS === undefined ? 'Hold the picture' : 'Go on'}
        </button>
      )}
    </p>
  );
}
