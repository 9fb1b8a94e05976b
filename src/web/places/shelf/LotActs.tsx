/** Changing a lot's name and alkali, its label, taking it off the shelf and putting it back. */
import { useState } from 'react';
import { Link } from 'wouter';
import { alkaliGPerKgRange } from '../../../core/lot/lot.ts';
import { Choice } from '../../parts/Choice.tsx';
import { Field } from '../../parts/Field.tsx';
import { failureOf } from '../../records/failureOf.ts';
import { useChangeLot, useShelveLot } from '../../records/useLots.ts';
import { nameTrouble } from '../stove/setting/lotFields.ts';
import type { Shown } from './shown.ts';
import { type AlkaliTold, alkaliOf, alkalis, toldOfAlkali } from './told/alkali.ts';

export function LotActs({ shown }: { readonly shown: Shown }) {
  const { id, removed } = shown;
  const shelving = useShelveLot(id);
  const [changing, setChanging] = useState(false);
  const [trouble, setTrouble] = useState<string>();
  const onError = (error: unknown) => setTrouble(failureOf(error, 'Not done'));
  return (
    <>
      <div className="shelf-acts">
        <Link className="button" href={`/shelf/${id}/label`}>
          Label
        </Link>
        <Link className="button" href={`/glass?lot=${id}`}>
          Put it in a beer
        </Link>
        <button type="button" aria-expanded={changing} onClick={() => setChanging(!changing)}>
          Change
        </button>
        {removed === null ? (
          <button type="button" onClick={() => shelving.mutate('off', { onError })}>
            Take off the shelf
          </button>
        ) : (
          <button type="button" className="main" onClick={() => shelving.mutate('back', { onError })}>
            Put it back
          </button>
        )}
      </div>
      {changing && <Correct shown={shown} onDone={() => setChanging(false)} />}
      <p role="status">{trouble}</p>
    </>
  );
}

/** Its name, and what it was browned with where nobody logged that. */
function Correct({ shown, onDone }: { readonly shown: Shown; readonly onDone: () => void }) {
  const { lot } = shown;
  const changing = useChangeLot(shown);
  const [name, setName] = useState(lot.name);
  const [alkali, setAlkali] = useState<AlkaliTold>(toldOfAlkali(lot.alkali));
  const [dose, setDose] = useState(String(alkali.alkaliGPerKg));
  const gPerKg = Number(dose.replace(',', '.'));
  const [least, most] = alkaliGPerKgRange;
  const wrongDose =
    dose.trim() !== '' && gPerKg >= least && gPerKg <= most ? undefined : `Allowed: ${least} to ${most} g/kg.`;
  const wrong = nameTrouble(name);
  const asksDose = alkali.alkali === 'sodiumHydroxide' || alkali.alkali === 'calciumHydroxide';
  const can = wrong === undefined && !(asksDose && wrongDose) && !changing.isPending;
  const problem = changing.error ? failureOf(changing.error, 'Not changed') : undefined;
  return (
    <form
      className="shelf-fields"
      aria-label="Change it"
      onSubmit={(event) => {
        event.preventDefault();
        const told = alkaliOf({ alkali: alkali.alkali, alkaliGPerKg: gPerKg });
        if (can) changing.mutate({ name: name.trim(), weighedKg: lot.weighedKg, alkali: told }, { onSuccess: onDone });
      }}
    >
      <Field name="lot-name" label="Name" text={name} onText={setName} trouble={wrong} refusal={problem} wide />
      <Choice
        label="Browned with"
        value={alkali.alkali}
        options={alkalis}
        onChoose={(chosen) => setAlkali({ ...alkali, alkali: chosen })}
      />
      {asksDose && (
        <Field
          name="lot-alkali"
          label="Pure, g for each kg of sugar"
          text={dose}
          onText={setDose}
          trouble={wrongDose}
          keyboard="decimal"
        />
      )}
      <button type="submit" className="main" disabled={!can}>
        Keep the change
      </button>
    </form>
  );
}
