/** Whom to call. */
import { emergencyNumbers } from './statements.ts';

const dialled = (number: string): string => `tel:${number.replace(/[^\d+]/g, '')}`;

export function Numbers() {
  return (
    <section aria-labelledby="call" className="numbers">
      <h2 id="call">Call</h2>
      <ul>
        {emergencyNumbers.map(({ id, place, number, further }) => (
          <li key={id}>
            <a href={dialled(number)} className="number">
              {number}
            </a>
            <span>
              {place}
              {further && (
                <>
                  <br />
                  {further.name} <a href={dialled(further.number)}>{further.number}</a>
                </>
              )}
            </span>
          </li>
        ))}
        <li>
          <span className="number blank" aria-hidden="true" />
          <span>Elsewhere: your local number</span>
        </li>
      </ul>
    </section>
  );
}
