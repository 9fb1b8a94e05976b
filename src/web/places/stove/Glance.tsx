/** The glance: what it is now, whether that is all right, and what comes next, readable from a step back. */
import type { Step } from '../../../core/pan/steps.ts';
import { clock } from '../../parts/figures.ts';
import { stepNames } from '../../parts/stepNames.ts';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { degrees, inUnit, type TemperatureUnit } from '../../parts/temperature.ts';
import { BandGauge } from './BandGauge.tsx';
import { bandWords } from './card.ts';
import type { View } from './view.ts';

interface GlanceProps {
  readonly view: View;
  readonly steps: readonly Step[];
  readonly mode: 'live' | 'rehearsal';
  /** The picture is held, and since when, s. */
  readonly heldForS: number | undefined;
}

export function Glance({ view, steps, heldForS }: Omit<GlanceProps, 'mode'>) {
  const { unit } = useTemperatureUnit();
  const { believedC, progress, timeS } = view;
  const step = steps[progress.stepIndex];
  if (!step) return null;
  return (
    <section className="glance" aria-label="Now" data-held={heldForS !== undefined}>
      <p className="step-now">
        <span>
          <strong>{stepNames[step.kind]}</strong>, step {progress.stepIndex + 1} of {steps.length}
        </span>
        <span className="cook-time">
          {heldForS === undefined ? clock(timeS / 60) : <strong>HELD, {heldForS.toFixed(0)} s ago</strong>}
        </span>
      </p>
      <div className="now" data-overdue={view.overdue}>
        <p className="temperature" data-role="temperature">
          {inUnit(believedC.mid, unit).toFixed(0)}
          <span className="unit"> °{unit}</span>
        </p>
        <Trend cPerMin={view.trendCPerMin} unit={unit} />
      </div>
      <BandGauge believedC={believedC} bandC={step.bandC} unit={unit} />
      <p className="where">
        {view.overdue && 'By the model alone: '}
        {whereWords(view, step, unit)}
      </p>
      <p className="chance">{chanceWords(view, step)}</p>
      <Hold view={view} step={step} />
    </section>
  );
}

/** Where the glance comes from: below the card, because it is read at leisure. */
export function GlanceDetail({ view, mode }: Pick<GlanceProps, 'view' | 'mode'>) {
  const { unit } = useTemperatureUnit();
  const { believedC, notch } = view;
  const shown = (c: number) => inUnit(c, unit).toFixed(1);
  return (
    <p className="glance-detail small quiet">
      Twin’s estimate, 8 in 10: {shown(believedC.low)}–{shown(believedC.high)} °{unit}. Dial {notch}.
      <br />
      {readingWords(view, mode, unit)}
    </p>
  );
}

function readingWords(
  { reading, apart, timeS, overdue }: View,
  mode: GlanceProps['mode'],
  unit: TemperatureUnit,
): string {
  if (apart) {
    const both = apart.probes.map(({ probe, valueC }) => `“${probe}” ${inUnit(valueC, unit).toFixed(1)} °${unit}`);
    return `Two thermometers: ${both.join(', ')}.`;
  }
  if (!reading) return 'No reading yet: the model stands alone.';
  const name = mode === 'rehearsal' ? 'Simulated thermometer' : reading.byHand ? 'Read by hand' : 'Thermometer';
  const value = reading.valueC === null ? 'no number' : `${inUnit(reading.valueC, unit).toFixed(1)} °${unit}`;
  const age = ageWords(Math.max(0, Math.floor(timeS - reading.atS)));
  const doubt = reading.used === false ? ', strange, not believed' : '';
  return `${name}: ${value}, ${age} old${doubt}.${overdue ? ' Overdue: the model stands alone.' : ''}`;
}

const ageWords = (s: number): string => (s < 120 ? `${s} s` : `${Math.floor(s / 60)} min`);

function Trend({ cPerMin, unit }: { readonly cPerMin: number; readonly unit: TemperatureUnit }) {
  const value = unit === 'C' ? cPerMin : cPerMin * 1.8;
  const way = Math.abs(cPerMin) < 0.3 ? 'steady' : cPerMin > 0 ? 'rising' : 'falling';
  const turn = { steady: 90, rising: 45, falling: 135 }[way];
  return (
    <p className="trend">
      <svg viewBox="0 0 32 32" width="28" height="28" aria-hidden="true">
        <path
          d="M16 29V5M7 14l9-9 9 9"
          transform={`rotate(${turn} 16 16)`}
          fill="none"
          stroke="currentColor"
          strokeWidth="3.5"
        />
      </svg>
      <strong>{way}</strong>
      <span className="rate">
        {Math.abs(value).toFixed(1)} °{unit}/min
      </span>
    </p>
  );
}

function whereWords({ believedC }: View, step: Step, unit: TemperatureUnit): string {
  const [low, high] = step.bandC;
  const off = (k: number) => `${Math.max(1, Math.round(unit === 'C' ? k : k * 1.8))} °${unit}`;
  const band = bandWords(step, unit);
  if ('reachedC' in step.end) {
    const { reachedC } = step.end;
    const to = degrees(reachedC, unit);
    if (believedC.mid < reachedC) return `${off(reachedC - believedC.mid)} to go to ${to}`;
    return believedC.mid > reachedC + 1 ? `${off(believedC.mid - reachedC)} past ${to}` : `At ${to}`;
  }
  if (believedC.mid > high) return `${off(believedC.mid - high)} above the band, ${band}`;
  return believedC.mid < low ? `${off(low - believedC.mid)} below the band, ${band}` : `In the band, ${band}`;
}

/** Asked for holds alone: a climb is meant to leave its band. */
function chanceWords({ advice, believedC, progress, overdue }: View, step: Step): string {
  if (overdue) return 'Without a reading nobody can say';
  if ('reachedC' in step.end) return 'No band to hold in this step';
  const outside = believedC.mid < step.bandC[0] || believedC.mid > step.bandC[1];
  if (progress.inBandSinceS === undefined || step.letDown) return 'On the way: no band to hold yet';
  if (outside) return 'Outside the band now';
  const odds = Math.round(advice.leavesBand * 10);
  const said = odds === 0 ? 'less than 1 in 10' : odds === 10 ? 'more than 9 in 10' : `${odds} in 10`;
  return `Leaves the band within 60 s: ${said}`;
}

function Hold({ view, step }: { readonly view: View; readonly step: Step }) {
  const { heldMinutes, inBandSinceS } = view.progress;
  if (!('heldMinutes' in step.end) || step.letDown) return <div className="hold" />;
  const of = step.end.heldMinutes;
  return (
    <div className="hold">
      <p>
        {inBandSinceS === undefined ? 'Hold not begun' : `Held ${heldMinutes.toFixed(1)}`} of {of.toFixed(0)} min
        <span className="quiet small"> that count at mid-band</span>
      </p>
      <div
        className="held"
        role="progressbar"
        aria-label="Hold, in minutes that count"
        aria-valuemin={0}
        aria-valuemax={Math.round(of)}
        aria-valuenow={Math.min(Math.round(of), Math.floor(heldMinutes))}
      >
        <div style={{ inlineSize: `${Math.min(100, (100 * heldMinutes) / of)}%` }} />
      </div>
    </div>
  );
}
