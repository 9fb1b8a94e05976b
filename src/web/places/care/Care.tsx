/** Care: what to do when something goes wrong, in big type, on one printed page. */
import { usePrintLine } from '../../parts/usePrintLine.ts';
import { useTitle } from '../../parts/useTitle.ts';
import { Cooling } from './Cooling.tsx';
import { Numbers } from './Numbers.tsx';
import { emergencyNumbers, topics } from './statements.ts';
import './care.css';

export default function Care() {
  useTitle('Care');
  usePrintLine();
  return (
    <main id="main" className="care">
      <h1>Care</h1>
      <p className="defer">
        Your local emergency services, the safety data sheet of your own alkali and local rules come before this page.
      </p>
      <Cooling />
      <Numbers />
      <div className="topics">
        {topics.map(({ id, title, statements }) => (
          <section key={id} aria-labelledby={id}>
            <h2 id={id}>{title}</h2>
            <ol>
              {statements.map((statement) => (
                <li key={statement.id}>
                  {statement.text} <span className="source-id">{statement.id.replace('CARE-', '')}</span>
                </li>
              ))}
            </ol>
          </section>
        ))}
      </div>
      <button type="button" className="screen" onClick={() => window.print()}>
        Print this page
      </button>
      <Sources />
    </main>
  );
}

function Sources() {
  const all = [...topics.flatMap(({ statements }) => statements), ...emergencyNumbers];
  return (
    <details className="sources screen">
      <summary>Where each statement comes from</summary>
      <dl>
        {all.map(({ id, source, date, region }) => (
          <div key={id}>
            <dt>{id.replace('CARE-', '')}</dt>
            <dd>
              {source}. Written down {date}; region: {region}.
            </dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
