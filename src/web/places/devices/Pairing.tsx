/** Pairs this device with a code: from the address that was scanned, or typed. */
import { useEffect, useState } from 'react';
import { Field } from '../../parts/Field.tsx';
import { ProblemError } from '../../records/answer.ts';
import './instruments/connect.css';
import { usePair } from './useDevices.ts';

export function Pairing() {
  const [code, setCode] = useState(codeInAddress);
  const [name, setName] = useState(likelyName);
  const pair = usePair();
  // The address is in the history and may be sent on: the code does not stay in it.
  useEffect(() => {
    if (location.hash) history.replaceState(history.state, '', location.pathname);
  }, []);
  return (
    <>
      <p>The code is shown on the machine that serves: on its page Devices, or where it was started.</p>
      <form
        className="devices-form"
        onSubmit={(event) => {
          event.preventDefault();
          pair.mutate({ code, name });
        }}
      >
        <Field name="code" label="Code" text={code} onText={setCode} hint="8 letters and digits" />
        <Field name="device" label="Name of this device" text={name} onText={setName} />
        <button type="submit" className="main" disabled={pair.isPending || code.trim() === '' || name.trim() === ''}>
          Pair
        </button>
      </form>
      <p role="status">{pair.error && troubleOf(pair.error)}</p>
    </>
  );
}

function troubleOf(error: Error): string {
  return error instanceof ProblemError ? `Not paired. ${error.message}` : 'Not paired: the server is not reached.';
}

const codeInAddress = (): string => /^#([0-9A-Za-z]{8})$/.exec(location.hash)?.[1] ?? '';

function likelyName(): string {
  const { userAgent } = navigator;
  if (/iPad|Tablet/.test(userAgent)) return 'Tablet';
  return /Android|iPhone|Mobile/.test(userAgent) ? 'Phone' : 'Laptop';
}
