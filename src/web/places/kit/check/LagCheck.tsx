/** A plunge from room into hot water: one tap as the thermometer passes each mark. */
import type { Sample } from '../../../../core/learn/checks/lag.ts';
import { Stepper } from '../../../parts/Stepper.tsx';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { fromUnit, inUnit } from '../../../parts/temperature.ts';
import type { KitHand } from '../useKitInHand.ts';
import { Noted } from './Noted.tsx';
import { Outcome } from './Outcome.tsx';
import { useHeld } from './useHeld.ts';
import { minutesText, useSeconds } from './useSeconds.ts';

interface Plunge {
  readonly fromC: number;
  readonly toC: number;
  readonly plungedMs: number | undefined;
  readonly samples: readonly Sample[];
}

/** Shares of the way at which a tap is asked for, after which it has to stand still. */
const marks = [0.2, 0.35, 0.5, 0.6, 0.7, 0.8, 0.88];

export function LagCheck({ hand }: { readonly hand: KitHand }) {
  const { unit } = useTemperatureUnit();
  const { id = '', kit } = hand.record ?? {};
  const fresh: Plunge = { fromC: kit?.roomC ?? 21, toC: 99, plungedMs: undefined, samples: [] };
  const [plunge, setPlunge] = useHeld<Plunge>(`umberpan.check.${id}.lag`, fresh);
  const { fromC, toC, plungedMs, samples } = plunge;
  const seconds = useSeconds(plungedMs);
  const share = marks[samples.length];
  // Whole degrees are what can be watched for.
  const markOf = (part: number) => fromUnit(Math.round(inUnit(fromC + part * (toC - fromC), unit)), unit);
  const text = (celsius: number) => `${inUnit(celsius, unit).toFixed(0)} °${unit}`;
  const note = (valueC: number) => {
    if (plungedMs === undefined) return;
    setPlunge({ ...plunge, samples: [...samples, { timeS: (Date.now() - plungedMs) / 1000, valueC }] });
  };
  const stepper = (label: string, value: number, onC: (celsius: number) => void) => (
    <Stepper
      label={`${label}, °${unit}`}
      value={inUnit(value, unit)}
      steps={[0.5, 5]}
      range={[inUnit(0, unit), inUnit(110, unit)]}
      onChange={(typed) => onC(fromUnit(typed, unit))}
    />
  );
  const done = samples.length > marks.length;
  return (
    <>
      <section className="doing">
        <ol className="steps">
          <li>Let the probe lie in the room until it stands still. Have water at a gentle boil. Steam scalds.</li>
          <li>Plunge the tip in and tap “Plunged” in the same moment; hold it still, off the bottom.</li>
          <li>Tap each time it passes the mark on the button, then say where it comes to stand.</li>
        </ol>
        {plungedMs === undefined ? (
          <>
            {stepper('It shows in the room', fromC, (value) => setPlunge({ ...plunge, fromC: value }))}
            {stepper('It will show in the water, about', toC, (value) => setPlunge({ ...plunge, toC: value }))}
            <button type="button" className="main big" onClick={() => setPlunge({ ...plunge, plungedMs: Date.now() })}>
              Plunged
            </button>
          </>
        ) : (
          <>
            <p className="stopwatch" role="timer" aria-label="Since the plunge">
              {minutesText(seconds)}
            </p>
            {share !== undefined && (
              <button type="button" className="main huge" onClick={() => note(markOf(share))}>
                It passes {text(markOf(share))}
              </button>
            )}
            {share === undefined && !done && (
              <>
                {stepper('It stands still at', toC, (value) => setPlunge({ ...plunge, toC: value }))}
                <button type="button" className="main big" onClick={() => note(toC)}>
                  It stands still
                </button>
              </>
            )}
            <Noted
              label="Taps"
              texts={samples.map(({ timeS, valueC }) => `${timeS.toFixed(1)} s: ${text(valueC)}`)}
              onStrike={() => setPlunge({ ...plunge, samples: samples.slice(0, -1) })}
            />
            <button type="button" onClick={() => setPlunge({ ...fresh, fromC, toC })}>
              Begin again
            </button>
          </>
        )}
      </section>
      <Outcome
        hand={hand}
        entry={done ? { kind: 'lag', samples, fromC } : undefined}
        wants="It takes one plunge with all its marks."
        onKept={() => setPlunge(fresh)}
      />
    </>
  );
}
