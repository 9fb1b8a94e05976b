/** Makes a code that lets one device in, and shows it as a picture for its camera. */
import { useState } from 'react';
import { useSearch } from 'wouter';
import type { DeviceRole, Invited } from '../../../api/device.ts';
import { Choice } from '../../parts/Choice.tsx';
import { failureOf } from '../../records/failureOf.ts';
import { boundAtFirst, boundLabels, boundOf, boundOptions } from './boundTo.ts';
import { QrCode } from './QrCode.tsx';
import { useCooks } from './useCooks.ts';
import { useDevices, useInvite } from './useDevices.ts';
import { momentWords, roleNames, roleWords } from './words.ts';

const roleOptions = (['cook', 'reader', 'probe', 'keeper'] as const).map((role) => [role, roleWords[role]] as const);
const stays = [
  ['good', 'For good'],
  ['6', 'This evening, 6 hours'],
  ['72', 'Three days'],
] as const;
type Stay = (typeof stays)[number][0];

export function Invite() {
  /** The Book and the Stove lead here to share a cook. */
  const shared = new URLSearchParams(useSearch()).get('share');
  const [role, setRole] = useState<DeviceRole>(shared ? 'reader' : 'cook');
  const [stay, setStay] = useState<Stay>(shared ? '6' : 'good');
  const [chosen, setChosen] = useState(shared ?? undefined);
  const cooks = useCooks();
  const bound = chosen ?? boundAtFirst(role, cooks);
  const { data: devices } = useDevices();
  /** Those that were let in before the code was made. */
  const [before, setBefore] = useState<ReadonlySet<string>>(new Set());
  const invite = useInvite();
  const came = invite.data && devices?.find(({ id, role: is }) => is === invite.data.role && !before.has(id));
  const choose = (next: DeviceRole) => {
    setRole(next);
    setChosen(undefined);
    // Who looks on does so for an evening, unless told otherwise.
    setStay(next === 'reader' ? '6' : 'good');
  };
  return (
    <section aria-labelledby="invite">
      <h2 id="invite">Let a device in</h2>
      <div className="devices-form">
        <Choice label="It may" value={role} options={roleOptions} onChoose={choose} />
        {boundLabels[role] && (
          <Choice
            label={boundLabels[role]}
            value={bound}
            options={boundOptions(role, cooks, boundOf(bound))}
            onChoose={setChosen}
          />
        )}
        <Choice label="For how long" value={stay} options={stays} onChoose={setStay} />
        <button
          type="button"
          className="main"
          disabled={!devices}
          onClick={() => {
            setBefore(new Set(devices?.map(({ id }) => id)));
            const cook = boundLabels[role] ? boundOf(bound) : null;
            invite.mutate({ role, hours: stay === 'good' ? null : Number(stay), cook });
          }}
        >
          Make a code
        </button>
      </div>
      <div role="status">
        {invite.error && <p>{failureOf(invite.error, 'No code was made')}</p>}
        {came && (
          <p>
            “{came.name}” is let in as {roleNames[came.role].toLowerCase()}, and the code is used up.
          </p>
        )}
        {invite.data && !came && <Code invited={invite.data} />}
      </div>
    </section>
  );
}

function Code({ invited: { code, role, ends, links } }: { readonly invited: Invited }) {
  const [link, ...others] = links;
  const names = others
    .map((each) => each.split('#')[0] ?? '')
    .filter((each) => !/^\[|^[\d.]+$/.test(new URL(each).hostname));
  return (
    <div className="code">
      {link && role !== 'probe' && <QrCode text={link} label={`Picture of the address ${link}`} />}
      <div>
        <p className="code-letters">
          <span>{code.slice(0, 4)}</span> <span>{code.slice(4)}</span>
        </p>
        <p>
          Lets one device in as {roleNames[role].toLowerCase()}, once, until {momentWords(ends)}.
        </p>
        {role === 'probe' && <PairByProgram address={link?.split('pair#')[0] ?? `${location.origin}/`} code={code} />}
        {link ? (
          role !== 'probe' && (
            <p>
              Point its camera at the picture, or open <span className="address">{link.split('#')[0]}</span> there and
              type the code.
              {names.length > 0 && (
                <>
                  {' '}
                  By name, which stays when the address changes: <span className="address">{names.join(' or ')}</span>
                </>
              )}
            </p>
          )
        ) : (
          <p>
            <strong>Only this machine is served now.</strong> Stop Umberpan and start it with{' '}
            <code>umberpan serve --lan</code>.
          </p>
        )}
      </div>
    </div>
  );
}

/** A board has no camera: it asks for its token once, and sends it with each reading. */
function PairByProgram({ address, code }: { readonly address: string; readonly code: string }) {
  const body = JSON.stringify({ code, name: 'Thermometer' });
  return (
    <>
      <p>A thermometer without a screen gets its token by one request:</p>
      <pre className="small">
        <code>{`curl -H 'content-type: application/json' -d '${body}' ${address}api/pairing`}</code>
      </pre>
      <p>and sends it with each reading:</p>
      <pre className="small">
        <code>{`curl -H 'authorization: Bearer TOKEN' -H 'content-type: text/plain' -d 131.5 '${address}api/readings?unit=C'`}</code>
      </pre>
    </>
  );
}
