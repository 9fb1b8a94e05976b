/** The pan line as a table, for those who read or hear it better so: a row every five minutes, one at each step's beginning, and the pour. */
import { clock } from '../figures.ts';
import { stepNames } from '../stepNames.ts';
import { useTemperatureUnit } from '../TemperatureUnit.tsx';
import { momentAt, saidOf } from './moment.ts';
import type { Bands, Picture } from './picture.ts';

const everyS = 300;

export function PanTable({ picture, bands }: { readonly picture: Picture; readonly bands: Bands | undefined }) {
  const { unit } = useTemperatureUnit();
  const { steps, endS } = picture;
  const regular = Array.from({ length: Math.floor(endS / everyS) + 1 }, (_, i) => i * everyS);
  const times = [...new Set([...regular, ...steps.map(({ startS }) => startS), endS])].sort((a, b) => a - b);
  const moments = times.map((timeS) => momentAt(picture, bands, timeS));
  const names = moments[0] ? saidOf(moments[0], unit).map(({ name }) => name) : [];
  return (
    <details className="screen pan-table">
      <summary>The pan line as a table</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: without it the keyboard could not scroll the table */}
      <section className="scroll" aria-label="Pan line as a table" tabIndex={0}>
        <table>
          <caption className="unseen">
            The planned cook over time: what is expected, and in brackets where 8 in 10 cooks should be
          </caption>
          <thead>
            <tr>
              <th scope="col">Time</th>
              <th scope="col">Step</th>
              {names.map((name) => (
                <th key={name} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {moments.map((moment) => (
              <tr key={moment.timeS}>
                <th scope="row">{clock(moment.timeS / 60)}</th>
                <td>{stepNames[moment.kind]}</td>
                {saidOf(moment, unit).map(({ name, value, range }) => (
                  <td key={name}>
                    {value} {range && <span className="quiet">({range})</span>}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}
