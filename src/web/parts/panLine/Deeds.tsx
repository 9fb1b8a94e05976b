/** Deeds on a pan line, as a score below it: numbers of the dial, drops for water, wedges for parts of alkali. */
import type { Layout } from './layout.ts';
import type { Picture, PlanDrawn } from './picture.ts';

const numberWidth = 13;

interface DeedsProps {
  readonly picture: Pick<Picture, 'deeds'> & { readonly plan: PlanDrawn };
  readonly layout: Layout;
}

export function Deeds({ picture, layout }: DeedsProps) {
  const { x, rails, left, right } = layout;
  const alkali = Boolean(picture.plan.amounts.alkali);
  const lines = [
    { name: 'dial', at: rails.dial },
    { name: 'water', at: rails.water },
    ...(alkali ? [{ name: 'alkali', at: rails.alkali }] : []),
  ];
  return (
    <g>
      {lines.map(({ name, at }) => (
        <g key={name}>
          <text className="axis-name" x={left - 8} y={at + 4} textAnchor="end">
            {name}
          </text>
          <line className="rail" x1={left} x2={right} y1={at} y2={at} />
        </g>
      ))}
      {dialNumbers(picture, layout).map(({ timeS, notch }) => (
        <text key={timeS} className="dial-number" x={x(timeS)} y={rails.dial + 4.5} textAnchor="middle">
          {notch}
        </text>
      ))}
      {picture.deeds.map(({ timeS, deed }, i) => {
        const key = `${i}-${timeS}`;
        if (deed.kind === 'alkali') return <path key={key} className="deed" d={wedge(x(timeS), rails.alkali)} />;
        if (deed.kind !== 'water') return null;
        return deed.spoonfuls > 0 ? (
          <path key={key} className="deed" d={drop(x(timeS), rails.water)} />
        ) : (
          <path key={key} className="portion" d={`M${x(timeS)} ${rails.water - 5}v10`} />
        );
      })}
    </g>
  );
}

/** The dial's numbers that have room; the last of some close together is the one that stays. */
function dialNumbers({ deeds }: Pick<Picture, 'deeds'>, { x }: Layout) {
  const turns = deeds.flatMap(({ timeS, deed }) => (deed.kind === 'heat' ? [{ timeS, notch: deed.notch }] : []));
  return turns.filter(({ timeS }, i) => {
    const next = turns[i + 1];
    return !next || x(next.timeS) - x(timeS) > numberWidth;
  });
}

const drop = (x: number, y: number): string => `M${x} ${y - 6}c2 3 3.5 5 3.5 7a3.5 3.5 0 1 1-7 0c0-2 1.5-4 3.5-7z`;
const wedge = (x: number, y: number): string => `M${x} ${y + 5}l-4.5-10h9z`;
