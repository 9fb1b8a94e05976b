/** The page that a code's picture leads to: pairs this device, and says where to go then. */
import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { CookRecord } from '../../../api/cook.ts';
import type { Device } from '../../../api/device.ts';
import { useTitle } from '../../parts/useTitle.ts';
import { answerTo } from '../../records/answer.ts';
import { useStanding } from '../../records/useStanding.ts';
import { Pairing } from './Pairing.tsx';
import { ThisDevice } from './ThisDevice.tsx';
import { goingOn, useCooks } from './useCooks.ts';
import './devices.css';

export default function Pair() {
  useTitle('Pair this device');
  const standing = useStanding();
  if (!standing) return <main id="main" className="devices" aria-busy="true" />;
  return (
    <main id="main" className="devices narrow">
      <h1>{standing.standing === 'unpaired' ? 'Pair this device' : 'Paired'}</h1>
      {standing.standing === 'unpaired' ? (
        <Pairing />
      ) : (
        <>
          <ThisDevice standing={standing} />
          {standing.device && <p>The list on the other screen shows the same check words. If not, let it out there.</p>}
          <Onward device={standing.device} />
        </>
      )}
    </main>
  );
}

function Onward({ device }: { readonly device: Device | null }) {
  if (device?.role === 'probe') return null;
  return <p className="devices-buttons">{device?.cook ? <ToShared id={device.cook} /> : <ToAll />}</p>;
}

/** To the cook that was shared: live, or as it was. */
function ToShared({ id }: { readonly id: string }) {
  const { data } = useQuery({
    queryKey: ['cook', id],
    queryFn: async () => (await answerTo<{ cook: CookRecord }>(`/api/cooks/${id}`)).cook,
  });
  if (!data) return null;
  return (
    <Link className="button" href={data.ended === null ? `/stove/cook/${id}` : `/book/${id}`}>
      To the cook: {data.name}
    </Link>
  );
}

/** To the cook that goes on, if there is one. */
function ToAll() {
  const running = goingOn(useCooks());
  return (
    <>
      {running && (
        <Link className="button" href={`/stove/cook/${running.id}`}>
          To the cook: {running.name}
        </Link>
      )}
      <Link className="button" href="/stove">
        To the Stove
      </Link>
    </>
  );
}
