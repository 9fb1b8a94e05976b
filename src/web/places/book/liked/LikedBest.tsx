/** Which cooks made the beers liked best, as far as the tastings tell; nothing before two cooks' beers were tasted. */
import { Link } from 'wouter';
import { type LikedCook, likedBest } from '../../../../core/beer/liked.ts';
import { WideTable } from '../../../parts/WideTable.tsx';
import { LikingBar } from './LikingBar.tsx';
import { chanceText, countsText, likingText, points, standingWords, verdictText } from './likedWords.ts';

interface LikedBestProps {
  readonly cooks: readonly LikedCook[];
  readonly nameOf: (cookId: string) => string;
}

export function LikedBest({ cooks, nameOf }: LikedBestProps) {
  if (cooks.length < 2) return null;
  const isTold = likedBest(cooks) !== undefined || cooks.some(({ standing }) => standing === 'better');
  return (
    <section className="liked-best" aria-labelledby="liked-best">
      <h2 id="liked-best">Liked best</h2>
      <p>{verdictText(cooks, nameOf)}</p>
      <details open={isTold}>
        <summary>Each cook whose beers were tasted</summary>
        <WideTable label="How the beers of each cook were liked, as a table">
          <table>
            <thead>
              <tr>
                <th scope="col">Cook</th>
                <th scope="col">Tasted</th>
                <th scope="col">Mean</th>
                <th scope="col">Likely, 8 in 10</th>
                <th scope="col">0 to 10</th>
                <th scope="col">Is the best</th>
                <th scope="col">Told</th>
              </tr>
            </thead>
            <tbody>
              {cooks.map((cook) => (
                <tr key={cook.cookId}>
                  <th scope="row">
                    <Link href={`/book/${cook.cookId}`}>{nameOf(cook.cookId)}</Link>
                  </th>
                  <td>{countsText(cook)}</td>
                  <td>{points(cook.plainMean)}</td>
                  <td>{likingText(cook)}</td>
                  <td>
                    <LikingBar cook={cook} />
                  </td>
                  <td>{chanceText(cook.best)}</td>
                  <td>{standingWords[cook.standing]}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </WideTable>
        <p className="small quiet">
          Few tastings lean on all the others, many stand for themselves (partial pooling: Gelman and others, Bayesian
          Data Analysis, chapter 5; how much cooks, beers and tastings may differ is assumed at first, and then told by
          the tastings). A beer counts for a cook by the cook’s share of its sugar. What malt, hops and age did can’t be
          told from what the sugar did.
        </p>
      </details>
    </section>
  );
}
