/** For the one who sets out the cups: which code stands for which lot. The taster looks away. */
import type { Blind } from '../../../../core/lot/blind.ts';
import type { Shown } from '../shown.ts';

interface SetOutProps {
  readonly order: readonly Blind[];
  readonly lots: readonly Shown[];
  readonly onDone: () => void;
}

export function SetOut({ order, lots, onDone }: SetOutProps) {
  const byName = order
    .map(({ id, code }) => ({ code, name: lots.find((lot) => lot.id === id)?.lot.name ?? '' }))
    .toSorted((a, b) => a.name.localeCompare(b.name));
  return (
    <section aria-labelledby="set-out">
      <h2 id="set-out">Set out</h2>
      <p>
        For the one who does not taste. Write each code on a cup and put the sugar in: the same weight of each,
        dissolved in the same water, since colour and texture would give it away. Dark glasses or closed eyes help.
      </p>
      <table className="codes">
        <thead>
          <tr>
            <th scope="col">Sugar</th>
            <th scope="col">Code</th>
          </tr>
        </thead>
        <tbody>
          {byName.map(({ code, name }) => (
            <tr key={code}>
              <th scope="row">{name}</th>
              <td className="figure">{code}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <button type="button" className="main" onClick={onDone}>
        Set out: hand it to the taster
      </button>
    </section>
  );
}
