/** The steps: what to do, between which temperatures, when and how long, and how the sugar looks after each. */
import { tooHot } from '../../../core/book/stepDeeds.ts';
import type { StepForecast } from '../../../core/planning/forecast.ts';
import { Drop } from '../../parts/Drop.tsx';
import { ebcOf, span } from '../../parts/figures.ts';
import type { Bands, Picture } from '../../parts/panLine/picture.ts';
import { stepNames } from '../../parts/stepNames.ts';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { bandOf, deedOf } from './stepWords.ts';

interface StepTableProps {
  readonly picture: Picture;
  readonly bands: Bands | undefined;
  readonly onPaper?: boolean;
}

const whole = (value: number): string => value.toFixed(0);

export function StepTable({ picture, bands, onPaper }: StepTableProps) {
  const { unit } = useTemperatureUnit();
  const forecast = bands?.forecast.steps;
  return (
    <table className="steps">
      <caption>
        Steps <span className="quiet">expected, and below where 8 in 10 cooks should be</span>
        {onPaper && <span className="told-once">{tooHot}</span>}
      </caption>
      <thead>
        <tr>
          <th scope="col">Step</th>
          <th scope="col">Band</th>
          <th scope="col">Ends at</th>
          <th scope="col">Lasts</th>
          <th scope="col">Spoonfuls</th>
          <th scope="col">Colour after</th>
        </tr>
      </thead>
      <tbody>
        {picture.plan.steps.map((step, i) => {
          const end = picture.ends[i];
          const tone = picture.tones[i];
          const ahead = forecast?.[i];
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: two steps may be of a kind, and each is known by its place
            <tr key={i}>
              <th scope="row">
                <strong>{stepNames[step.kind]}</strong>
                <span className="deed">
                  {deedOf(step, picture, i, unit)} {'heldMinutes' in step.end && !step.letDown && !onPaper && tooHot}
                </span>
              </th>
              <td data-label="Band">{bandOf(step, unit)}</td>
              <Ranged label="Ends at" unit="min" value={end?.endMinute} range={ahead?.endMinute} show={whole} />
              <Ranged label="Lasts" unit="min" value={end?.minutes} range={ahead?.minutes} show={whole} />
              <Ranged label="Spoonfuls" value={end?.spoonfuls} range={ahead?.spoonfuls} show={whole} />
              <td data-label="Colour after" className="tone">
                <div>
                  {tone && !onPaper && <Drop tone={tone} size={36} />}
                  <Ebc value={end?.a430} range={ahead?.a430} />
                </div>
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

interface RangedProps {
  readonly label: string;
  readonly unit?: string;
  readonly value: number | undefined;
  readonly range: StepForecast['minutes'] | undefined;
  readonly show: (value: number) => string;
}

function Ranged({ label, unit, value = 0, range, show }: RangedProps) {
  return (
    <td data-label={label}>
      {show(value)} {unit}
      <span className="range">{range ? span(range, show) : ' '}</span>
    </td>
  );
}

function Ebc({ value = 0, range }: Pick<RangedProps, 'value' | 'range'>) {
  return (
    <span>
      {ebcOf(value)} EBC
      <span className="range">{range ? span(range, ebcOf) : ' '}</span>
    </span>
  );
}
