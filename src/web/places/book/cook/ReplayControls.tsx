/** Play, the time in the cook, and how fast. */
import { clock } from '../../../parts/figures.ts';
import type { Replay } from './useReplay.ts';

const speeds = [1, 10, 60, 300] as const;

export function ReplayControls({ replay, endS }: { readonly replay: Replay; readonly endS: number }) {
  const { atS, playing, speed } = replay;
  return (
    <fieldset className="replay-controls">
      <legend className="unseen">Replay</legend>
      <button type="button" className="main" onClick={playing ? replay.pause : replay.play}>
        {playing ? 'Pause' : atS >= endS ? 'Replay' : 'Go on'}
      </button>
      <label className="replay-time">
        <span>{clock(atS / 60)}</span>
        <input
          type="range"
          aria-label="Time in the cook"
          aria-valuetext={clock(atS / 60)}
          min={0}
          max={Math.round(endS)}
          step={10}
          value={Math.round(atS)}
          onChange={(event) => replay.goTo(Number(event.target.value))}
        />
      </label>
      <label className="replay-speed">
        <span className="small" aria-hidden="true">
          Speed
        </span>
        <select aria-label="Speed" value={speed} onChange={(event) => replay.setSpeed(Number(event.target.value))}>
          {speeds.map((each) => (
            <option key={each} value={each}>
              {each} ×
            </option>
          ))}
        </select>
      </label>
      <button type="button" disabled={atS >= endS} onClick={() => replay.goTo(endS)}>
        To the end
      </button>
    </fieldset>
  );
}
