/** The clock of a rehearsal: held, or so many cook seconds for each second; says when the machine can't keep up. */
import { actions } from './session.ts';
import type { View } from './view.ts';

const speeds = [1, 10, 30, 60];

export function ClockControls({ view }: { readonly view: View }) {
  const { running, asked, measured, slowed, slowsForActs } = view.pace;
  const behind = measured !== undefined && measured < 0.9 * asked;
  const choices = speeds.includes(asked) ? speeds : [...speeds, asked];
  return (
    <section className="clock" aria-label="Clock">
      <div className="clock-buttons">
        <button type="button" disabled={!view.begun} onClick={() => actions.run(!running)}>
          {running || !view.begun ? 'Pause' : 'Go on'}
        </button>
        {choices.map((speed) => (
          <button
            key={speed}
            type="button"
            aria-pressed={speed === asked}
            aria-label={`${speed} times`}
            onClick={() => actions.setSpeed(speed)}
          >
            {speed}×
          </button>
        ))}
      </div>
      <label className="slows">
        <input
          type="checkbox"
          checked={slowsForActs}
          onChange={(event) => actions.setSlowsForActs(event.target.checked)}
        />
        Real pace, 1×, while a card asks for something
      </label>
      <p className="small quiet pace" role="status">
        {!view.begun && 'The clock starts with the first deed.'}
        {view.begun && !running && 'The clock is held.'}
        {running && slowed && 'At 1× until the card is answered.'}
        {running && !slowed && behind && `This machine can’t do ${asked}×: the clock goes at ${measured?.toFixed(0)}×.`}
      </p>
    </section>
  );
}
