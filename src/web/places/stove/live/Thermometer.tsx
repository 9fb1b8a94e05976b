/** What the thermometer shows: typed by large steppers, or sent by the thermometer itself. */
import { useEffect, useState } from 'react';
import { Link } from 'wouter';
import { readingAsReceived } from '../../../../core/log/readingAsReceived.ts';
import { Stepper } from '../../../parts/Stepper.tsx';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { degrees, inUnit } from '../../../parts/temperature.ts';
import { ConnectInstrument } from '../../devices/instruments/ConnectInstrument.tsx';
import { readingsGoTo } from '../../devices/instruments/listening.ts';
import { useActs } from '../acts.ts';
import type { View } from '../view.ts';
import { likelySlips } from './slips.ts';

const byHand = 'by hand';

export function Thermometer({ view, cookId }: { readonly view: View; readonly cookId: string }) {
  const { unit, choose } = useTemperatureUnit();
  const acts = useActs();
  // It goes on while another place is looked at: not taken back when this is not shown.
  useEffect(() => readingsGoTo((reading) => acts.say('reading', reading)), [acts]);
  const expected = Math.round(inUnit(view.believedC.mid, unit));
  // Until it is touched it goes along with what is expected.
  const [typed, setTyped] = useState<number>();
  /** The question as it was asked: it stands still while it is read. */
  const [asked, setAsked] = useState<{
    readonly value: number;
    readonly slips: readonly number[];
    readonly expectedC: number;
  }>();
  const value = typed ?? expected;
  const ucum = unit === 'C' ? 'Cel' : '[degF]';

  function keep(shown: number, vouched: boolean) {
    acts.say('reading', { ...readingAsReceived(byHand, shown, ucum), quality: 'byHand' });
    if (vouched) acts.say('vouched', { probe: byHand });
    setTyped(undefined);
    setAsked(undefined);
  }
  function read() {
    const slips = likelySlips(value, unit, view.believedC);
    if (slips) setAsked({ value, slips, expectedC: view.believedC.mid });
    else keep(value, false);
  }

  return (
    <section className="thermometer" aria-labelledby="thermometer">
      <h2 id="thermometer">Thermometer</h2>
      {asked === undefined ? (
        <>
          <Stepper
            label={`It shows, °${unit}`}
            value={value}
            steps={[1, 5]}
            range={unit === 'C' ? [-20, 220] : [0, 430]}
            onChange={setTyped}
          />
          <button type="button" className="main keep-reading" onClick={read}>
            Keep {value} °{unit}
          </button>
        </>
      ) : (
        <div role="alertdialog" aria-label={`Really ${asked.value} °${unit}?`} className="slip">
          <p>
            <strong>
              Really {asked.value} °{unit}?
            </strong>{' '}
            Expected: about {degrees(asked.expectedC, unit)}.
          </p>
          {asked.slips.map((slip) => (
            <button key={slip} type="button" className="main" onClick={() => keep(slip, false)}>
              It was {slip} °{unit}
            </button>
          ))}
          <button type="button" onClick={() => keep(asked.value, true)}>
            Yes, {asked.value} °{unit}: the thermometer is right
          </button>
          <button type="button" onClick={() => setAsked(undefined)}>
            Look again
          </button>
        </div>
      )}
      <p>
        <button type="button" onClick={() => choose(unit === 'C' ? 'F' : 'C')}>
          Show and type °{unit === 'C' ? 'F' : 'C'}
        </button>
      </p>
      <details>
        <summary>A thermometer that sends by itself</summary>
        <ConnectInstrument unit={unit} />
        <p className="small">
          Whatever can send over the network, to the address of this page. One line does it, with C or F as its unit;
          from another device with the token of its own, woken for this cook on the page{' '}
          <Link href="/devices">Devices</Link>:
        </p>
        <pre className="small">
          <code>{curlLine(cookId, unit)}</code>
        </pre>
        <p className="small quiet">Every 5 to 10 s is plenty. When it falls silent, an alarm says so.</p>
      </details>
    </section>
  );
}

function curlLine(cook: string, unit: 'C' | 'F'): string {
  const example = unit === 'C' ? '131.5' : '268.7';
  return `curl -H 'content-type: text/plain' -d ${example} '${location.origin}/api/readings?unit=${unit}&cook=${cook}'`;
}
