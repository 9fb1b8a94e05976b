/** What a scale, strips or a refractometer say of the pan: the twin believes them beside the thermometer. */
import { useState } from 'react';
import { Stepper } from '../../../parts/Stepper.tsx';
import { useActs } from '../acts.ts';

const kinds = [
  { kind: 'weight', name: 'Weight' },
  { kind: 'dilutionPh', name: 'pH' },
  { kind: 'dilutionBrix', name: 'Brix' },
] as const;
type Kind = (typeof kinds)[number]['kind'];

/** @param tareKg weight of the empty pan with the kit's thermometer, as typed for the kit */
export function Measure({ tareKg }: { readonly tareKg: number }) {
  const [kind, setKind] = useState<Kind>('weight');
  return (
    <details className="other-deeds">
      <summary>Measure the pan</summary>
      <div className="other-grid">
        <div className="choices">
          {kinds.map((each) => (
            <button key={each.kind} type="button" aria-pressed={each.kind === kind} onClick={() => setKind(each.kind)}>
              {each.name}
            </button>
          ))}
        </div>
        {kind === 'weight' ? <Weight tareKg={tareKg} /> : <Dilution key={kind} kind={kind} />}
      </div>
    </details>
  );
}

function Weight({ tareKg }: { readonly tareKg: number }) {
  const acts = useActs();
  const [tare, setTare] = useState(Math.round(tareKg * 1000));
  const [gross, setGross] = useState(Math.round(tareKg * 1000) + 500);
  return (
    <div>
      <p className="small">Off the heat, on a dry mat. Never carry a full pan further than you must.</p>
      <Stepper label="Empty pan, g" value={tare} steps={[1, 10]} range={[50, 10_000]} onChange={setTare} />
      <Stepper label="Pan and syrup, g" value={gross} steps={[1, 10]} range={[100, 20_000]} onChange={setGross} />
      <button
        type="button"
        disabled={gross <= tare}
        onClick={() => acts.say('weight', { grossKg: gross / 1000, tareKg: tare / 1000 })}
      >
        {gross > tare ? `${gross - tare} g of syrup` : 'The full pan weighs more than the empty one'}
      </button>
    </div>
  );
}

function Dilution({ kind }: { readonly kind: 'dilutionPh' | 'dilutionBrix' }) {
  const acts = useActs();
  const [value, setValue] = useState(kind === 'dilutionPh' ? 5 : 8);
  const [syrup, setSyrup] = useState(5);
  const [water, setWater] = useState(45);
  const masses = { syrupKg: syrup / 1000, waterKg: water / 1000 };
  const keep = () =>
    kind === 'dilutionPh'
      ? acts.say('dilutionPh', { ph: value, ...masses })
      : acts.say('dilutionBrix', { brix: value, ...masses, temperatureC: 20 });
  return (
    <div>
      <p className="small">A drop let fall into cold water, weighed before and after; measured once it is cool.</p>
      <Stepper label="Syrup, g" value={syrup} steps={[0.1, 1]} range={[0.1, 500]} onChange={setSyrup} />
      <Stepper label="Water, g" value={water} steps={[1, 5]} range={[0, 2000]} onChange={setWater} />
      {kind === 'dilutionPh' ? (
        <Stepper label="pH of it" value={value} steps={[0.1, 0.5]} range={[1, 13]} onChange={setValue} />
      ) : (
        <Stepper
          label="°Brix of it, at 20 °C or corrected to it"
          value={value}
          steps={[0.1, 1]}
          range={[0, 90]}
          onChange={setValue}
        />
      )}
      <button type="button" onClick={keep}>
        Keep it
      </button>
    </div>
  );
}
