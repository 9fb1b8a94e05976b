/** Thermometers that the server listens to by itself: each can be tried here before a cook. */
import { useState } from 'react';
import type { InputRecord } from '../../../../api/input.ts';
import { timeText } from '../../../parts/dayText.ts';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { inUnit, type TemperatureUnit } from '../../../parts/temperature.ts';
import { failureOf } from '../../../records/failureOf.ts';
import { InputForm } from './InputForm.tsx';
import { faultWords, stateWords, whereFrom } from './inputWords.ts';
import { useInputs, useRemoveInput, useSwitchInput } from './useInputs.ts';

export function Inputs({ keeps }: { readonly keeps: boolean }) {
  const { data, error } = useInputs();
  const { inputs = [], broker = null } = data ?? {};
  const [adding, setAdding] = useState(false);
  return (
    <section aria-labelledby="inputs">
      <h2 id="inputs">Thermometers</h2>
      <p>Umberpan listens to these, also without a cook: what they send is shown here first.</p>
      {broker && (
        <p>
          Its own MQTT broker is at <span className="address">{broker.join(' or ')}</span>. From the network a
          thermometer shows its token there as password, with any user name; from this machine it needs none.
        </p>
      )}
      {error && <p role="status">{failureOf(error, 'The list is old')}</p>}
      <ul className="input-list">
        {inputs.map((record) => (
          <InputLine key={record.id} record={record} keeps={keeps} />
        ))}
      </ul>
      {keeps && !adding && (
        <button type="button" onClick={() => setAdding(true)}>
          Add a thermometer
        </button>
      )}
      {adding && <InputForm hasBroker={broker !== null} onDone={() => setAdding(false)} />}
    </section>
  );
}

function InputLine({ record, keeps }: { readonly record: InputRecord; readonly keeps: boolean }) {
  const { unit } = useTemperatureUnit();
  const change = useSwitchInput();
  const remove = useRemoveInput();
  const { input, status } = record;
  const trouble = change.error ?? remove.error;
  return (
    <li data-state={status.state}>
      <p>
        <strong>{input.name}</strong> <span className="quiet">probe “{input.probe}”</span>
      </p>
      <p>
        {stateWords[status.state]}
        {status.reason && `: ${status.reason}`}.{' '}
        {status.cook ? `Readings go to “${status.cook.name}”.` : input.on && 'No cook is going on.'}
      </p>
      <p className="small quiet">
        {whereFrom(input)}. {status.heard} heard, {status.passedOver} passed over.
      </p>
      {status.last.length > 0 && <Last status={status} unit={unit} name={input.name} />}
      {keeps && (
        <div className="devices-buttons">
          <button type="button" onClick={() => change.mutate(record)}>
            {input.on ? 'Turn off' : 'Turn on'}
          </button>
          <button type="button" aria-label={`Remove ${input.name}`} onClick={() => remove.mutate(record.id)}>
            Remove
          </button>
        </div>
      )}
      {trouble && <p role="alert">{failureOf(trouble, 'Not changed')}</p>}
    </li>
  );
}

interface LastProps {
  readonly status: InputRecord['status'];
  readonly unit: TemperatureUnit;
  readonly name: string;
}

function Last({ status: { last }, unit, name }: LastProps) {
  return (
    <table className="input-last">
      <caption className="unseen">Last readings of {name}</caption>
      <thead>
        <tr>
          <th scope="col">At</th>
          <th scope="col">Sent</th>
          <th scope="col">Taken as</th>
        </tr>
      </thead>
      <tbody>
        {last.map(({ at, raw, valueC, fault }) => (
          <tr key={at}>
            <td>{timeText(at, { seconds: true })}</td>
            <td>{raw === null ? 'nothing' : String(raw)}</td>
            <td>
              {valueC === null ? '' : `${inUnit(valueC, unit).toFixed(1)} °${unit}`}
              {fault && `${valueC === null ? '' : ', '}${faultWords[fault]}`}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
