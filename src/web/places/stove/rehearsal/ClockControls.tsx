/** The clock of a rehearsal: held, or so many cook seconds for each second; says when the machine can't keep up. */
import type { Pace } from '../view.ts';
import { clockActs } from './session.ts';

const speeds = [1, 10, 30, 60];

export function ClockControls({ pace, begun }: { readonly pace: Pace; readonly begun: boolean }) {
  const { running, asked, measured, slowed, slowsForActs } = pace;
  const behind = measured !== undefined && measured < 0.9 * asked;
  const choices = speeds.includes(asked) ? speeds : [...speeds, asked];
  return (
    <section className="clock" aria-label="Clock">
      <div className="clock-buttons">
        <button type="button" disabled={!begun} onClick={() => clockActs.run(!running)}>
          {running || !begun ? 'Pause' : 'Go on'}
        </button>
        {choices.map((speed) => (
          <button
            key={speed}
            type="button"
            aria-pressed={speed === asked}
            aria-label={`${speed}× the pace`}
            onClick={() => clockActs.setSpeed(speed)}
          >
            {speed}×
          </button>
        ))}
      </div>
      <label className="slows">
        <input
          type="checkbox"
          checked={slowsForActs}
          onChange={(event) => clockActs.setSlowsForActs(event.target.checked)}
        />
        Real pace, 1×, while a card asks for something
      </label>
      <p className="small quiet pace">
        {!begun && 'The clock starts with the first deed.'}
        {begun && !running && 'The clock is held.'}
        {running && slowed && 'At 1× until the card is answered.'}
        {running && !slowed && behind && `This machine can’t do ${asked}×: the clock goes at ${measured?.toFixed(0)}×.`}
      </p>
    </section>
  );
}
