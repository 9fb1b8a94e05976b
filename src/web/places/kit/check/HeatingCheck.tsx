/** Water heated and left to cool: one run for power, lag and loss; several settings for the dial's curve. */
import type { HeatingRun } from '../../../../core/learn/checks/waterPan.ts';
import type { KitHand } from '../useKitInHand.ts';
import { HeatRun } from './HeatRun.tsx';
import { Outcome } from './Outcome.tsx';
import { useHeld } from './useHeld.ts';

interface HeatingCheckProps {
  readonly hand: KitHand;
  readonly kind: 'heating' | 'dial';
}

export function HeatingCheck({ hand, kind }: HeatingCheckProps) {
  const { id = '', kit } = hand.record ?? {};
  const [runs, setRuns] = useHeld<readonly HeatingRun[]>(`umberpan.check.${id}.${kind}`, []);
  if (!kit) return null;
  const tried = new Set(runs.map(notchOf));
  const enough = kind === 'heating' ? runs.length > 0 : tried.size > 1;
  return (
    <>
      <section className="doing">
        <ol className="steps">
          <li>
            Weigh 0.5 to 2 kg of cold water into the pan you cook in. Stir through the whole test: warm water floats.
          </li>
          <li>
            {kind === 'heating'
              ? 'A middle setting of the dial is best. Ring on for about seven minutes, to no more than 70 °C.'
              : 'The same with three settings far apart, one after the other, each with cold water and a cold ring.'}
          </li>
          <li>Ring off, and read on: what it still gives tells its power from its lag.</li>
        </ol>
        <HeatRun
          key={runs.length}
          holdKey={`umberpan.check.${id}.${kind}.run`}
          kit={kit}
          onDone={(run) => setRuns([...runs, run])}
        />
        {runs.length > 0 && (
          <ul className="runs" aria-label="Tests done">
            {runs.map((run, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: tests have no identity but their place
              <li key={i}>
                Setting {notchOf(run)}, {(run.waterKg * 1000).toFixed(0)} g, {run.readings.length} readings
                <button
                  type="button"
                  className="plain"
                  aria-label={`Strike out test ${i + 1}`}
                  onClick={() => setRuns(runs.filter((_, at) => at !== i))}
                >
                  ×
                </button>
              </li>
            ))}
          </ul>
        )}
      </section>
      <Outcome
        hand={hand}
        entry={enough ? { kind, runs } : undefined}
        wants={
          kind === 'heating'
            ? 'It takes one test. A second with another amount of water also tells what the pan takes up.'
            : 'It takes tests at two settings; three are better.'
        }
        onKept={() => setRuns([])}
      />
    </>
  );
}

const notchOf = ({ settings }: HeatingRun): number => Math.max(...settings.map(({ notch }) => notch));
