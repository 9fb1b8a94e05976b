/** One line below the masthead, for devices that are not let in or only look on; nothing for all others. */
import { Link, useLocation } from 'wouter';
import { useStanding } from '../../records/useStanding.ts';
import { momentWords } from './words.ts';

export function StandingLine() {
  const [path] = useLocation();
  const standing = useStanding();
  if (path === '/pair' || path === '/devices') return null;
  if (standing?.standing === 'unpaired') {
    return (
      <p className="standing-line" role="status">
        This device is not let in: what you do stays on it. <Link href="/pair">Pair it</Link>
      </p>
    );
  }
  const { device } = standing ?? {};
  if (device?.role !== 'reader') return null;
  return (
    <p className="standing-line" role="status">
      You look on as a guest{device.expires && ` until ${momentWords(device.expires)}`}:{' '}
      {device.cook ? 'one cook was shared with you' : 'nothing is changed from here'}.
      {device.cook && !path.endsWith(device.cook) && (
        <>
          {' '}
          <Link href="/pair">To it</Link>
        </>
      )}
    </p>
  );
}
