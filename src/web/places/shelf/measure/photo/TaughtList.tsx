/** What this phone was taught, each to be taken away: another camera, or a lamp that was changed, makes it wrong. */

import { dayText } from '../../../../parts/dayText.ts';
import { lightWords } from './PhotoSetUpFields.tsx';
import { forgetTaught, useTaughtPhone } from './taughtPhone.ts';

export function TaughtList() {
  const taught = useTaughtPhone();
  if (taught.length === 0) return <p className="small quiet">It was taught nothing yet.</p>;
  return (
    <ul className="note-list">
      {taught.toReversed().map(({ id, of, light, at, a430Path }) => (
        <li key={id}>
          <span>
            <strong>{of}</strong>{' '}
            <span className="small quiet">
              in {lightWords[light]}, {dayText(at)}; {a430Path.toFixed(2)} over the light’s path
            </span>
          </span>
          <button type="button" className="plain" onClick={() => forgetTaught(id)}>
            Take away
            <span className="unseen">
              {' '}
              {of}, {lightWords[light]}, {dayText(at)}
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
}
