/** Where a difference comes from, as bars on both sides of a line, each with the range that 8 in 10 draws lie in. */
import type { Explained, OutcomeName } from '../../../../core/book/explain.ts';
import { addsText, factorWords, outcomeWords } from '../../../../core/book/words.ts';
import { useWidth } from '../../../parts/panLine/useWidth.ts';

const [rowHeight, barHeight, nameWidth] = [44, 16, 96];

export function ExplainPicture({ explained, of }: { readonly explained: Explained; readonly of: OutcomeName }) {
  const [frame, width] = useWidth();
  const shares = explained.shares[of];
  const all = shares.flatMap(({ adds }) => [adds.low, adds.high, 0]);
  const [least, most] = [Math.min(...all), Math.max(...all, 1e-9)];
  const inner = Math.max(80, width - nameWidth - 16);
  const x = (value: number) => nameWidth + 8 + ((value - least) / (most - least || 1)) * (inner - 8);
  return (
    <div ref={frame} className="explain-picture">
      <svg
        width={width}
        height={shares.length * rowHeight + 4}
        role="img"
        aria-label={`${outcomeWords[of].name}: ${shares.map(({ factor, adds }) => `${factorWords[factor]} ${addsText(of, adds)}`).join('; ')}`}
      >
        <line className="explain-zero" x1={x(0)} x2={x(0)} y1="0" y2={shares.length * rowHeight} />
        {shares.map(({ factor, adds }, i) => {
          const top = i * rowHeight + 8;
          const middle = top + barHeight / 2;
          return (
            <g key={factor}>
              <text x={nameWidth} y={middle + 4} textAnchor="end" className="explain-name">
                {factorWords[factor]}
              </text>
              <rect
                className="explain-bar"
                x={Math.min(x(0), x(adds.mid))}
                y={top}
                width={Math.abs(x(adds.mid) - x(0))}
                height={barHeight}
              />
              <path
                className="explain-range"
                d={`M${x(adds.low)} ${middle}H${x(adds.high)}M${x(adds.low)} ${middle - 5}v10M${x(adds.high)} ${middle - 5}v10`}
              />
              <text x={nameWidth + 8} y={top + barHeight + 15} className="explain-value">
                {addsText(of, adds)}
              </text>
            </g>
          );
        })}
      </svg>
    </div>
  );
}
