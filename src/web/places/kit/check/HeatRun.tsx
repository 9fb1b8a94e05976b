/** One water-heating test by the stopwatch: big steppers for wet hands, a reading each half minute. */
import { readOnS } from '../../../../core/learn/checks/heating.ts';
import type { HeatingRun } from '../../../../core/learn/checks/waterPan.ts';
import type { Kit } from '../../../../core/pan/kit.ts';
import { Stepper } from '../../../parts/Stepper.tsx';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { fromUnit, inUnit } from '../../../parts/temperature.ts';
import { Noted } from './Noted.tsx';
import { useHeld } from './useHeld.ts';
import { minutesText, useSeconds } from './useSeconds.ts';

interface HeatRunProps {
  readonly kit: Kit;
  readonly holdKey: string;
  readonly onDone: (run: HeatingRun) => void;
}

interface Running {
  readonly waterG: number;
  readonly notch: number;
  readonly startC: number;
  readonly shownC: number;
  readonly onMs: number | undefined;
  readonly offS: number | undefined;
  readonly readings: HeatingRun['readings'];
}

/** Ring on for so long, s; hotter than this, C, water dries too fast to tell anything. */
const heatS = 420;
const hottestC = 70;
const fewestReadings = 10;

export function HeatRun({ kit, holdKey, onDone }: HeatRunProps) {
  const { unit } = useTemperatureUnit();
  const fresh: Running = {
    ...{ waterG: 1000, notch: Math.ceil(kit.stove.notches * 0.6), startC: 15, shownC: 15 },
    ...{ onMs: undefined, offS: undefined, readings: [] },
  };
  const [run, setRun] = useHeld<Running>(holdKey, fresh);
  const { waterG, notch, startC, shownC, onMs, offS, readings } = run;
  const seconds = useSeconds(onMs);
  const change = (part: Partial<Running>) => setRun({ ...run, ...part });
  const nowS = () => (onMs === undefined ? 0 : (Date.now() - onMs) / 1000);
  const degrees = (label: string, value: number, onC: (celsius: number) => void) => (
    <Stepper
      label={`${label}, °${unit}`}
      value={inUnit(value, unit)}
      steps={[0.5, 5]}
      range={[inUnit(0, unit), inUnit(99, unit)]}
      onChange={(typed) => onC(fromUnit(typed, unit))}
    />
  );
  if (onMs === undefined) {
    return (
      <div className="run">
        <Stepper
          label="Water, g"
          value={waterG}
          steps={[10, 100]}
          range={[200, 5000]}
          onChange={(g) => change({ waterG: g })}
        />
        <Stepper
          label="Setting of the dial"
          value={notch}
          steps={[0.5, 1]}
          range={[0.5, kit.stove.notches]}
          onChange={(to) => change({ notch: to })}
        />
        {degrees('Water at the start', startC, (value) => change({ startC: value, shownC: value }))}
        <button type="button" className="main big" onClick={() => change({ onMs: Date.now() })}>
          Ring on now
        </button>
      </div>
    );
  }
  const wantedS = offS === undefined ? heatS : offS + readOnS(kit);
  const finish = () => {
    const settings = [{ timeS: 0, notch }, ...(offS === undefined ? [] : [{ timeS: offS, notch: 0 }])];
    setRun({ ...fresh, waterG, startC });
    onDone({ waterKg: waterG / 1000, startC, settings, readings });
  };
  return (
    <div className="run">
      <p className="stopwatch" role="timer" aria-label="Since the ring was turned on">
        {minutesText(seconds)}
      </p>
      <p className="quiet" role="status">
        {offS === undefined ? heatingWords(shownC) : coolingWords(wantedS - seconds)}
      </p>
      {degrees('It shows', shownC, (value) => change({ shownC: value }))}
      <button
        type="button"
        className="main huge"
        onClick={() => change({ readings: [...readings, { timeS: nowS(), valueC: shownC }] })}
      >
        Note {inUnit(shownC, unit).toFixed(1)} °{unit} now
      </button>
      <div className="buttons">
        {offS === undefined && (
          <button type="button" className="big" onClick={() => change({ offS: nowS() })}>
            Ring off now
          </button>
        )}
        {offS !== undefined && readings.length >= fewestReadings && (
          <button type="button" className="big" onClick={finish}>
            Enough: reckon
          </button>
        )}
        <button type="button" className="plain" onClick={() => setRun({ ...fresh, waterG, startC })}>
          Begin again
        </button>
      </div>
      <Noted
        label="Readings"
        texts={readings.map(
          ({ timeS, valueC }) => `${minutesText(timeS)}: ${inUnit(valueC, unit).toFixed(1)} °${unit}`,
        )}
        onStrike={(at) => change({ readings: readings.filter((_, i) => i !== at) })}
      />
    </div>
  );
}

function heatingWords(shownC: number): string {
  if (shownC >= hottestC) return 'Hot enough: ring off now.';
  return `A reading each 20 to 30 s, stirring. Ring off at about ${minutesText(heatS)}, or at ${hottestC} °C.`;
}

function coolingWords(leftS: number): string {
  return leftS > 0 ? `Ring off. Read on for ${minutesText(leftS)}, stirring.` : 'That is long enough.';
}
