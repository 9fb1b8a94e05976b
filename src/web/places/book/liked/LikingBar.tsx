/** A liking on its scale from 0 to 10: the range as a box, its middle, and what the tastings alone come to as a ring. */
import type { LikedCook } from '../../../../core/beer/liked.ts';
import { likingRange } from '../../../../core/beer/tasting.ts';

const [width, height] = [168, 20];
const [least, most] = likingRange;
const x = (liking: number): number => 4 + ((width - 8) * (liking - least)) / (most - least);

export function LikingBar({ cook: { liking, plainMean } }: { readonly cook: LikedCook }) {
  return (
    <svg className="liking-bar" viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <path d={`M${x(least)} 10H${x(most)}M${x(least)} 5v10M${x(5)} 7v6M${x(most)} 5v10`} />
      <rect x={x(liking.low)} y="5.5" width={Math.max(3, x(liking.high) - x(liking.low))} height="9" />
      <path className="middle" d={`M${x(liking.mid)} 2v16`} />
      <circle cx={x(plainMean)} cy="10" r="3" />
    </svg>
  );
}
