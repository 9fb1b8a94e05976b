/** The plan of the same sugar before and after: what is done otherwise, and how much surer it is. */
import { stepTitles } from '../../../../core/book/words.ts';
import type { NextPlan } from '../../../../core/planning/nextPlan.ts';
import type { Range } from '../../../../core/twin/range.ts';
import { ebcOf, percent, span } from '../../../parts/figures.ts';
import { againLines } from './againLines.ts';

export function NextPlanView({ next }: { readonly next: NextPlan | 'reckoning' | undefined }) {
  if (next === undefined) return null;
  return (
    <section aria-labelledby="next-plan" className="next-plan">
      <h2 id="next-plan">The same plan, made again</h2>
      {next === 'reckoning' ? <p role="status">Reckoning …</p> : <Told next={next} />}
    </section>
  );
}

const minutes = (range: Range) => span(range, (value) => value.toFixed(0));

function Told({ next }: { readonly next: NextPlan }) {
  const { before, after, again } = next;
  const titles = stepTitles(after.steps.map(({ kind }) => kind));
  const rows = [
    ['Colour, EBC', span(before.a430, ebcOf), span(after.a430, ebcOf)],
    [
      'Water in it',
      span(before.waterShare, (share) => percent(share, 1)),
      span(after.waterShare, (share) => percent(share, 1)),
    ],
    ['Whole cook, min', minutes(before.minutes), minutes(after.minutes)],
    ...after.steps.flatMap((step, i) => {
      const was = before.steps[i];
      const name = titles[i];
      return [
        [`${name}: dial`, was.dial, step.dial],
        [`${name}: min`, minutes(was.minutes), minutes(step.minutes)],
      ];
    }),
  ].filter(([, one, other], i) => i < 3 || one !== other);
  return (
    <>
      {again && again.length > 0 && (
        <>
          <p>To land where it was thought to land before:</p>
          <ul className="again">
            {againLines(again).map((line) => (
              <li key={line}>
                <strong>{line}</strong>
              </li>
            ))}
          </ul>
        </>
      )}
      {again?.length === 0 && <p>It still lands where it was thought to land: holds and dose stay as they are.</p>}
      {again === undefined && <p>No plan of this route lands where it was thought to land before.</p>}
      <table>
        <caption>
          8 cooks in 10 <span className="quiet">before and after this lesson; only what differs</span>
        </caption>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">Before</th>
            <th scope="col">After</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([what, one, other]) => (
            <tr key={what}>
              <th scope="row">{what}</th>
              <td>{one}</td>
              <td>{other}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
