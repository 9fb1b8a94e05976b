/** Whether the thermometer of a rehearsal fails on the way, so that alarms and their answers are practised where nothing is hot. */

interface SurprisesChoiceProps {
  readonly chosen: boolean;
  readonly onChoose: (chosen: boolean) => void;
  /** The rehearsal has begun, and goes on as it did. */
  readonly fixed: boolean;
}

export function SurprisesChoice({ chosen, onChoose, fixed }: SurprisesChoiceProps) {
  return (
    <label className="slows">
      <input type="checkbox" checked={chosen} disabled={fixed} onChange={(event) => onChoose(event.target.checked)} />
      With surprises: a thermometer that fails
    </label>
  );
}
