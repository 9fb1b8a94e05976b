/** The checks, each with what it tells and how long it takes, and when it was last done. */
import { Link } from 'wouter';
import { type CheckKind, checkKinds } from '../../../core/learn/checks/check.ts';
import { checkWords } from '../../../core/learn/words.ts';
import type { Learned } from '../../../core/pan/learned.ts';
import { dayText } from '../../parts/dayText.ts';

const tells: Readonly<Record<CheckKind, string>> = {
  boilingWater: 'how far the thermometer is off; 5 min',
  ice: 'the same at 0 °C; 10 min',
  lag: 'how fast it follows; 3 min',
  spoons: 'how much water a spoonful brings; 5 min',
  heating: 'power, lag and loss of stove and pan; 15 to 25 min',
  dial: 'whether 6 gives twice what 3 gives; an hour',
};

export function CheckList({ id, learned }: { readonly id: string; readonly learned: Learned | undefined }) {
  const lastOf = (kind: CheckKind) =>
    learned?.lessons.findLast((lesson) => lesson.kind === 'check' && lesson.name === kind);
  return (
    <ul className="check-list">
      {checkKinds.map((kind) => {
        const last = lastOf(kind);
        return (
          <li key={kind}>
            <Link href={`/kit/${id}/check/${kind}`}>
              <strong>{checkWords[kind]}</strong>
              <span className="small quiet">{tells[kind]}</span>
              <span className="small done">{last ? `✓ done${last.at ? ` ${dayText(last.at)}` : ''}` : 'not done'}</span>
            </Link>
          </li>
        );
      })}
    </ul>
  );
}
