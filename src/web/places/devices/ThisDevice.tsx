/** How this device stands with the server. */
import type { Standing } from '../../../api/device.ts';
import { momentWords, roleWords } from './words.ts';

export function ThisDevice({ standing }: { readonly standing: Standing | undefined }) {
  return (
    <section aria-labelledby="this-device">
      <h2 id="this-device">This device</h2>
      <Told standing={standing} />
    </section>
  );
}

function Told({ standing }: { readonly standing: Standing | undefined }) {
  if (!standing) return <p className="quiet">The server is not reached.</p>;
  const { device } = standing;
  if (standing.standing === 'host')
    return <p>Umberpan runs on this machine: everything may be done here, without a code.</p>;
  if (!device) return <p>It is not let in. What you do here stays on this device until it is.</p>;
  return (
    <>
      <p>
        <strong>{device.name}</strong>. {roleWords[device.role]}
        {device.role === 'reader' && device.cook && ' at one cook'}.
        {device.expires && ` Until ${momentWords(device.expires)}.`}
      </p>
      <CheckWords words={device.words} />
    </>
  );
}

function CheckWords({ words }: { readonly words: string }) {
  return (
    <p className="small">
      Check words: <strong className="check-words">{words}</strong>
    </p>
  );
}
