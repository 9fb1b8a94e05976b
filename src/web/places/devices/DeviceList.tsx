/** Everybody who is let in, and the way to let them out. */
import type { Device } from '../../../api/device.ts';
import { Choice } from '../../parts/Choice.tsx';
import { failureOf } from '../../records/failureOf.ts';
import { boundLabels, boundOf, boundOptions, choiceOf } from './boundTo.ts';
import { useCooks } from './useCooks.ts';
import { useBind, useDevices, useLetOut } from './useDevices.ts';
import { momentWords, roleNames } from './words.ts';

export function DeviceList() {
  const { data: devices = [], error } = useDevices();
  const letOut = useLetOut();
  const trouble = letOut.error ?? error;
  return (
    <section aria-labelledby="let-in">
      <h2 id="let-in">Let in</h2>
      {devices.length === 0 && <p className="quiet">No other device yet.</p>}
      <ul className="device-list">
        {devices.map((device) => (
          <li key={device.id}>
            <Line device={device} />
            <BoundTo device={device} />
            <button type="button" aria-label={`Let ${device.name} out`} onClick={() => letOut.mutate(device.id)}>
              Let out
            </button>
          </li>
        ))}
      </ul>
      {devices.length > 1 && (
        <button type="button" onClick={() => letOut.mutate(undefined)}>
          Let all others out
        </button>
      )}
      <p role="status">{trouble && failureOf(trouble, letOut.error ? 'Not let out' : 'The list is old')}</p>
    </section>
  );
}

/** A thermometer sends to one cook, and a guest may see one. */
function BoundTo({ device: { id, name, role, cook } }: { readonly device: Device }) {
  const cooks = useCooks();
  const bind = useBind();
  const label = boundLabels[role];
  if (!label) return null;
  return (
    <div className="device-bound">
      <Choice
        label={`${name} ${label.replace(/^It /, '')}`}
        value={choiceOf(cook)}
        options={boundOptions(role, cooks, cook)}
        onChoose={(choice) => bind.mutate({ id, cook: boundOf(choice) })}
        refusal={bind.error ? failureOf(bind.error, 'Not changed') : undefined}
      />
    </div>
  );
}

function Line({ device: { name, role, lastSeen, expires, words } }: { readonly device: Device }) {
  return (
    <div>
      <p>
        <strong>{name}</strong> <span className="quiet">{roleNames[role]}</span>
      </p>
      <p className="small quiet">
        Seen {momentWords(lastSeen)}
        {expires && `; until ${momentWords(expires)}`}. Check words: {words}
      </p>
    </div>
  );
}
