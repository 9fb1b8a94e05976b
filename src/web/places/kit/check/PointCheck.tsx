/** Boiling water or melting ice: a few readings where nature knows the temperature. */
import { useState } from 'react';
import type { CheckEntry } from '../../../../core/learn/checks/check.ts';
import { boilingWater } from '../../../../core/learn/checks/fixedPoints.ts';
import { parseQuantity } from '../../../../core/units/parseQuantity.ts';
import { QuantityError } from '../../../../core/units/quantityError.ts';
import { Choice } from '../../../parts/Choice.tsx';
import { Field } from '../../../parts/Field.tsx';
import { Stepper } from '../../../parts/Stepper.tsx';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { fromUnit, inUnit } from '../../../parts/temperature.ts';
import type { KitHand } from '../useKitInHand.ts';
import { Noted } from './Noted.tsx';
import { Outcome } from './Outcome.tsx';
import { useHeld } from './useHeld.ts';

interface PointCheckProps {
  readonly hand: KitHand;
  readonly kind: 'boilingWater' | 'ice';
}

const fewest = 3;
const resolutions = ['0.1', '0.5', '1', '2'] as const;

export function PointCheck({ hand, kind }: PointCheckProps) {
  const { unit } = useTemperatureUnit();
  const { id = '', kit } = hand.record ?? {};
  const [readings, setReadings] = useHeld<readonly number[]>(`umberpan.check.${id}.${kind}`, []);
  const [resolution, setResolution] = useState<(typeof resolutions)[number]>('0.1');
  const [pressure, setPressure] = useState('');
  const air = pressureOf(pressure) ?? { altitudeM: kit?.altitudeM ?? 0 };
  const boils = boilingWater(air);
  const expected = kind === 'ice' ? 0 : boils.boilsC;
  const [shownC, setShownC] = useState(Math.round(expected * 10) / 10);
  const resolutionC = Number(resolution) / (unit === 'F' ? 1.8 : 1);
  const common = { readingsC: readings, resolutionC };
  const entry: CheckEntry = kind === 'ice' ? { kind, ...common } : { kind, ...common, air };
  const text = (celsius: number) => `${inUnit(celsius, unit).toFixed(1)} °${unit}`;
  return (
    <>
      <section className="doing">
        {kind === 'ice' ? (
          <IceSteps />
        ) : (
          <BoilingSteps boils={text(boils.boilsC)} sure={boils.sd * (unit === 'F' ? 1.8 : 1)} />
        )}
        {kind === 'boilingWater' && (
          <Field
            name="pressure"
            label="Barometer, if there is one"
            hint={`without it: ${kit?.altitudeM ?? 0} m, give or take the weather`}
            text={pressure}
            trouble={
              pressure.trim() !== '' && !pressureOf(pressure)
                ? 'Allowed: 600 to 1080 hPa, here and now, not reduced to the sea.'
                : undefined
            }
            onText={setPressure}
          />
        )}
        <Choice
          label={`It shows steps of, °${unit}`}
          value={resolution}
          options={resolutions.map((each) => [each, each] as const)}
          onChoose={setResolution}
        />
        <Stepper
          label={`It shows, °${unit}`}
          value={inUnit(shownC, unit)}
          steps={[0.1, 1]}
          range={[inUnit(-15, unit), inUnit(115, unit)]}
          onChange={(value) => setShownC(fromUnit(value, unit))}
        />
        <button type="button" className="main big" onClick={() => setReadings([...readings, shownC])}>
          Note this reading
        </button>
        <Noted
          label="Readings"
          texts={readings.map(text)}
          onStrike={(at) => setReadings(readings.filter((_, i) => i !== at))}
        />
      </section>
      <Outcome
        hand={hand}
        entry={readings.length >= fewest ? entry : undefined}
        wants={`It takes ${fewest} readings; five are better. Lift the probe out between them.`}
        onKept={() => setReadings([])}
      />
    </>
  );
}

function BoilingSteps({ boils, sure }: { readonly boils: string; readonly sure: number }) {
  return (
    <ol className="steps">
      <li>Bring a pan of plain water to a full rolling boil. Steam scalds: keep hand and arm to the side.</li>
      <li>Hold the tip in the middle of the water, off the bottom, for half a minute.</li>
      <li>
        Water boils at <strong>{boils}</strong> here, give or take {sure.toFixed(1)}. Note what the thermometer shows.
      </li>
    </ol>
  );
}

function IceSteps() {
  return (
    <ol className="steps">
      <li>Fill a glass with crushed ice, then cold water to the top. Stir, and wait for five minutes.</li>
      <li>Hold the tip in the middle of the ice, off the glass, for half a minute, stirring.</li>
      <li>
        Note what the thermometer shows. Boiling water tells more of where you cook; ice is the quick second point.
      </li>
    </ol>
  );
}

function pressureOf(text: string): { readonly pressurePa: number } | undefined {
  try {
    const pressurePa = parseQuantity(text, 'pressure', 'hPa');
    return pressurePa >= 60_000 && pressurePa <= 108_000 ? { pressurePa } : undefined;
  } catch (error) {
    if (error instanceof QuantityError) return undefined;
    throw error;
  }
}
