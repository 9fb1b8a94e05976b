/** The values at the time pointed at, or at the pour. Always as tall, so that nothing moves. */
import { clock } from '../figures.ts';
import { stepNames } from '../stepNames.ts';
import { useTemperatureUnit } from '../TemperatureUnit.tsx';
import { type Moment, saidOf } from './moment.ts';

export function Readout({ moment, resting }: { readonly moment: Moment; readonly resting: boolean }) {
  const { unit } = useTemperatureUnit();
  return (
    <dl className="readout">
      <div className="when">
        <dt>{resting ? 'At the pour' : stepNames[moment.kind]}</dt>
        <dd>{clock(moment.timeS / 60)}</dd>
        <dd className="range">{moment.deeds.join(', ')}</dd>
      </div>
      {saidOf(moment, unit).map(({ name, value, range }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
          <dd className="range">{range}</dd>
        </div>
      ))}
    </dl>
  );
}
