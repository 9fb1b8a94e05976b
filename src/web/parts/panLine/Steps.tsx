/** Steps on a pan line: their names, where each begins, and the band that it should stay in. */
import { stepNames } from '../stepNames.ts';
import { inUnit, type TemperatureUnit } from '../temperature.ts';
import type { Layout } from './layout.ts';
import type { Picture, PlanDrawn } from './picture.ts';

interface StepsProps {
  readonly picture: Pick<Picture, 'steps'> & { readonly plan: PlanDrawn };
  readonly layout: Layout;
  readonly unit: TemperatureUnit;
}

const letterWidth = 7.2;

/** Names in two rows where they would run into each other in one; one that fits in neither is left to the readout and the table. */
function placedNames(picture: StepsProps['picture'], { x, right }: Layout) {
  const taken = [0, 0];
  return picture.steps.map(({ kind, startS }) => {
    const name = stepNames[kind];
    const width = name.length * letterWidth;
    const wished = Math.min(x(startS) + 4, right - width);
    const [first = 0, second = 0] = taken;
    const row = first <= wished || first < second ? 0 : 1;
    const at = Math.max(wished, taken[row] ?? 0);
    if (at > wished && at + width > right) return { name: '', at, row, startS };
    taken[row] = at + width + 6;
    return { name, at, row, startS };
  });
}

export function StepNames({ picture, layout }: Omit<StepsProps, 'unit'>) {
  return (
    <g>
      {placedNames(picture, layout).map(({ name, at, row, startS }) => (
        <g key={startS}>
          <text className="step-name" x={at} y={13 + row * 16}>
            {name}
          </text>
          <line
            className="step-start"
            x1={layout.x(startS)}
            x2={layout.x(startS)}
            y1={row * 16 + 2}
            y2={layout.panels.at(-1)?.bottom ?? layout.plotBottom}
          />
        </g>
      ))}
    </g>
  );
}

export function StepBands({ picture, layout, unit }: StepsProps) {
  const { x, y } = layout;
  return (
    <g>
      {picture.steps.map(({ kind, startS, endS }, i) => {
        const step = picture.plan.steps[i];
        if (!step || !['invert', 'brown', 'roast', 'cast'].includes(kind)) return null;
        const [low, high] = step.bandC;
        // A step that is about to begin has not ended yet.
        const width = Math.max(0, x(endS) - x(startS));
        return (
          <g key={startS}>
            <rect className="step-band" x={x(startS)} y={y(high)} width={width} height={y(low) - y(high)} />
            {width > 52 && (
              <text className="band-name" x={x(startS) + 6} y={y(high) - 6}>
                {`${inUnit(low, unit).toFixed(0)}–${inUnit(high, unit).toFixed(0)} °${unit}`}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}
