/** How this device tells, in one line: sound on, or silence for five minutes. Alarms can't be silenced for longer, and are seen at all times. */
import { minutesAndSeconds } from '../alarms/alarmWords.ts';
import { tellingWords } from './tellingWords.ts';
import { longestMuteS } from './useMute.ts';
import type { Telling } from './useTelling.ts';
import './telling.css';

export function TellingSwitches({ telling }: { readonly telling: Telling }) {
  const { sound, mutedForS } = telling;
  return (
    <div className="telling">
      {sound !== 'on' ? (
        <button type="button" onClick={() => void telling.turnSoundOn()}>
          Sound on
        </button>
      ) : mutedForS > 0 ? (
        <button type="button" aria-pressed="true" onClick={telling.unmute}>
          Sound again
        </button>
      ) : (
        <button type="button" onClick={telling.mute}>
          Mute {longestMuteS / 60} min
        </button>
      )}
      <p className="small">
        <span role="status">{tellingWords(telling)}</span>
        {mutedForS > 0 && ` Sound comes back in ${minutesAndSeconds(mutedForS)}.`}
      </p>
    </div>
  );
}
