/** How a sugar tasted, over all of its tastings: a bar for the mean of each word, a line from the least to the most, and the number. */
import { profileOf, type Strengths, strengthRange } from '../../../../core/lot/taste.ts';

export function Profile({ tastings }: { readonly tastings: readonly { readonly strengths: Strengths }[] }) {
  const rows = profileOf(tastings);
  if (rows.length === 0) return null;
  const most = strengthRange[1];
  return (
    <table className="profile">
      <caption>
        Profile{' '}
        <span className="quiet">
          {tastings.length === 1 ? 'of one tasting' : `mean of ${tastings.length} tastings; the line: least to most`}
        </span>
      </caption>
      <tbody>
        {rows.map(({ name, mean, least, most: highest }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td className="bar">
              <svg viewBox="0 0 100 12" preserveAspectRatio="none" aria-hidden="true">
                {[0, 1, 2, 3, 4, 5].map((level) => (
                  <path key={level} className="grid" d={`M${(100 * level) / most} 0 v12`} />
                ))}
                <rect x="0" y="3" width={(100 * mean) / most} height="6" />
                {highest > least && (
                  <path className="spread" d={`M${(100 * least) / most} 6 H${(100 * highest) / most}`} />
                )}
              </svg>
            </td>
            <td className="figure-cell">{Number.isInteger(mean) ? mean : mean.toFixed(1)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
