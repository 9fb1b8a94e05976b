/** One cook of the list: what it was called, its small pan line, what it landed at, and a box to lay it over others. */
import { Link } from 'wouter';
import type { LikedCook } from '../../../../core/beer/liked.ts';
import { a430FromEbc } from '../../../../core/colour/scales.ts';
import { Drop } from '../../../parts/Drop.tsx';
import { dayText } from '../../../parts/dayText.ts';
import { clock, ebcOf } from '../../../parts/figures.ts';
import { likelyHueIndex } from '../../../parts/syrupPaint.ts';
import { countsText, likingText } from '../liked/likedWords.ts';
import { MiniLine } from './MiniLine.tsx';
import type { Entry } from './useBook.ts';

interface CookRowProps {
  readonly entry: Entry;
  readonly liked: LikedCook | undefined;
  readonly picked: boolean;
  readonly onPick: (picked: boolean) => void;
}

export function CookRow({ entry, liked, picked, onPick }: CookRowProps) {
  const { cook, summary } = entry;
  const rehearsed = cook.mode === 'rehearsal';
  return (
    <li className="cook-row" data-mode={cook.mode}>
      <label className="pick">
        <input
          type="checkbox"
          checked={picked}
          disabled={!summary}
          onChange={(event) => onPick(event.target.checked)}
        />
        <span className="unseen">Lay over: {cook.name}</span>
      </label>
      <div className="cook-names">
        <h2>
          <Link href={`/book/${cook.id}`}>{cook.name}</Link>
        </h2>
        <p className="small quiet">
          {rehearsed && <strong className="rehearsed">Rehearsal</strong>} {dayText(cook.begun)}
          {summary && `, ${clock(summary.endS / 60)}`}
        </p>
        {liked && (
          <p className="small quiet">
            Beers liked {likingText(liked)}; {countsText(liked)}
          </p>
        )}
      </div>
      {summary ? <MiniLine line={summary.line} endS={summary.endS} /> : <span className="mini-line" />}
      <Landed entry={entry} />
    </li>
  );
}

function Landed({ entry: { cook, summary, due, onlyHere } }: { readonly entry: Entry }) {
  if (summary?.landed) {
    const { ebc, waterShare } = summary.landed;
    const [low, mid, high] = [a430FromEbc(ebc.low), a430FromEbc(ebc.mid), a430FromEbc(ebc.high)];
    return (
      <p className="cook-landed">
        <Drop tone={{ a430: mid, hueIndex: likelyHueIndex(mid), waterShare: waterShare.mid }} size={36} />
        <span>
          <strong>{ebcOf(mid)} EBC</strong>
          <span className="small quiet">
            {ebcOf(low)} to {ebcOf(high)}
          </span>
        </span>
      </p>
    );
  }
  const words = summary
    ? 'Not poured'
    : due
      ? 'Being gone through'
      : onlyHere
        ? 'On this device only'
        : cook.ended
          ? 'Tells too little'
          : 'Under way';
  return <p className="cook-landed small quiet">{words}</p>;
}
