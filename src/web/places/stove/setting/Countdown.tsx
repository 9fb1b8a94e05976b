/** When the sugar can be touched, frozen and broken: a forecast, counted down. */
import { clock, span } from '../../../parts/figures.ts';
import type { Milestone, SettingForecast } from './forecast.ts';
import { useNow } from './useNow.ts';
import { whenOf } from './when.ts';

interface CountdownProps {
  readonly forecast: SettingForecast;
  readonly pouredMs: number;
}

export function Countdown({ forecast, pouredMs }: CountdownProps) {
  const now = useNow(5000);
  if (forecast.kind === 'none') {
    return <p role="alert">How it cools can’t be forecast: {forecast.because}. Treat it as hot.</p>;
  }
  const { milestones, freezer } = forecast;
  const passed = milestones.filter(({ minutes }) => minutes && whenOf(minutes, pouredMs, now).standing === 'by now');
  return (
    <section aria-labelledby="set-countdown">
      <h3 id="set-countdown">Cooling</h3>
      <ol className="set-countdown">
        {milestones.map((milestone) => (
          <Mark key={milestone.name} milestone={milestone} pouredMs={pouredMs} now={now} />
        ))}
      </ol>
      {freezer && (
        <p>In a freezer, from hand-warm: {span(freezer, (minutes) => minutes.toFixed(0))} min until it breaks dry.</p>
      )}
      <p className="unseen" role="status">
        {passed.map(({ name }) => `${name}: should be so by now.`).join(' ')}
      </p>
      <p className="small quiet">
        Computed, ± 25 %, from the pour {clock(Math.max(0, (now - pouredMs) / 60_000))} ago: nothing measures your tray.
        Hold a hand near before you touch.
      </p>
    </section>
  );
}

interface MarkProps {
  readonly milestone: Milestone;
  readonly pouredMs: number;
  readonly now: number;
}

function Mark({ milestone: { name, minutes, otherwise, remark }, pouredMs, now }: MarkProps) {
  const when = minutes && whenOf(minutes, pouredMs, now);
  return (
    <li data-standing={when?.standing}>
      <span className="name">{name}</span>
      <span className="figure">{when?.says ?? otherwise}</span>
      <span className="small quiet">
        {when && `${when.between}; `}
        {remark}
      </span>
    </li>
  );
}
