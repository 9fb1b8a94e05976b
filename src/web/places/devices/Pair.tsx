/** The page that a code's picture leads to: pairs this device, and says where to go then. */
import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { CookRecord } from '../../../api/cook.ts';
import { useTitle } from '../../parts/useTitle.ts';
import { answerTo } from '../../records/answer.ts';
import { useStanding } from '../../records/useStanding.ts';
import { Pairing } from './Pairing.tsx';
import { ThisDevice } from './ThisDevice.tsx';
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
          {standing.device?.role !== 'probe' && <Onward />}
        </>
      )}
    </main>
  );
}

/** To the cook that goes on, if there is one. */
function Onward() {
  const { data } = useQuery({
    queryKey: ['cooks', 'going on'],
    queryFn: async () => (await answerTo<{ cooks: CookRecord[] }>('/api/cooks')).cooks,
  });
  const running = data?.find(({ ended, mode }) => ended === null && mode === 'live');
  return (
    <p className="devices-buttons">
      {running && (
        <Link className="button" href={`/stove/cook/${running.id}`}>
          To the cook: {running.name}
        </Link>
      )}
      <Link className="button" href="/stove">
        To the Stove
      </Link>
    </p>
  );
}
