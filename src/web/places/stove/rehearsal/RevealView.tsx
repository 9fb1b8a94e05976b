/** After the pour: the hidden pan against what the twin believed, and how the cook was led. */
import { type ReactNode, useEffect, useRef } from 'react';
import { Link } from 'wouter';
import type { KitchenName } from '../../../../core/advice/reveal.ts';
import { Drop } from '../../../parts/Drop.tsx';
import { clock, ebcOf } from '../../../parts/figures.ts';
import { likelyHueIndex } from '../../../parts/syrupPaint.ts';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { inUnit } from '../../../parts/temperature.ts';
import type { Cooked } from '../cooked.ts';
import { unseenWords } from '../Unseen.tsx';
import { KeepInBook } from './KeepInBook.tsx';
import { RehearsedLot } from './RehearsedLot.tsx';
import type { Revealing } from './revealing.ts';
import { SurprisesTold } from './SurprisesTold.tsx';
import { type TellingWords, ToldTable } from './ToldTable.tsx';

interface RevealProps {
  readonly cooked: Cooked;
  readonly reveal: Revealing;
  readonly onAgain: () => void;
  /** How the next one is rehearsed. */
  readonly choice: ReactNode;
}

const whole = (value: number): string => value.toFixed(0);
const tenths = (value: number): string => value.toFixed(1);
const hundredths = (value: number): string => value.toFixed(2);

const kitchenWords: Readonly<Record<KitchenName, TellingWords>> = {
  stoveEfficiency: { name: 'Ring’s power that reaches the pan', show: (value) => whole(value * 100), after: ' %' },
  stoveLagS: { name: 'Ring’s lag', show: whole, after: ' s' },
  lossFactor: { name: 'Heat lost, times the usual', show: hundredths, after: '' },
  spoonFactor: { name: 'Water in a spoonful, times the spoon', show: hundredths, after: '' },
  thermometerOffsetC: { name: 'Thermometer shows too much', show: tenths, after: ' K' },
  thermometerLagS: { name: 'Thermometer’s lag', show: tenths, after: ' s' },
};

export function RevealView({ cooked, reveal, onAgain, choice }: RevealProps) {
  const { planned } = cooked;
  const { unit } = useTemperatureUnit();
  const title = useRef<HTMLHeadingElement>(null);
  // The card that had the focus is gone: what is new is read from its start.
  useEffect(() => title.current?.focus(), []);
  const { pan, kitchen, score, surprises } = reveal;
  const inside = [...pan, ...kitchen].filter((each) => each.inside).length;
  const a430 = pan.find(({ name }) => name === 'a430');
  const water = pan.find(({ name }) => name === 'waterShare')?.hidden ?? 0.03;
  const tone = (value: number) => ({ a430: value, hueIndex: likelyHueIndex(value), waterShare: water });
  return (
    <div className="reveal">
      <section aria-labelledby="revealed">
        <h2 id="revealed" ref={title} tabIndex={-1}>
          Poured: what was hidden
        </h2>
        {a430 && (
          <div className="landed">
            <Drop tone={tone(a430.hidden)} size={72} />
            <p>
              <span className="figure">{ebcOf(a430.hidden)} EBC</span>
              <span className="range">
                The twin said {ebcOf(a430.believed.low)} to {ebcOf(a430.believed.high)}
              </span>
            </p>
            <span className="twin-drop small quiet">
              <Drop tone={tone(a430.believed.mid)} size={48} />
              twin’s middle
            </span>
          </div>
        )}
        {a430 && <p>{landedWords(a430.hidden, planned.a430)}</p>}
        <dl className="score">
          <Figure name="Hold in band" value={share(score.inBand, score.looks)} />
          <Figure name="Spoonfuls" value={String(score.spoonfuls)} />
          <Figure name="Turns of the dial" value={String(score.turns)} />
          <Figure name="Cold pan to pour" value={clock(score.cookS / 60)} />
        </dl>
        <p>
          {inside} of {pan.length + kitchen.length} hidden values lie within what the twin held likely (8 in 10 should,
          over many cooks). The twin had {planned.members} pans and the thermometer alone; hidden pan{' '}
          {planned.begun.rehearsal?.seed}.
        </p>
        {surprises && <SurprisesTold surprises={surprises} />}
        {choice}
        <p className="buttons">
          <button type="button" className="main" onClick={onAgain}>
            Rehearse again on another pan
          </button>
          <RehearsedLot cooked={cooked} />
          <KeepInBook />
          <Link className="button" href="/stove/cook">
            Cook it for real
          </Link>
          <Link className="button" href="/">
            Back to the Desk
          </Link>
        </p>
      </section>
      <ToldTable
        caption="The sugar at the pour"
        told={pan}
        wordsOf={(name) =>
          name === 'temperatureC'
            ? { name: 'Temperature', show: (value) => tenths(inUnit(value, unit)), after: ` °${unit}` }
            : unseenWords[name]
        }
      />
      <ToldTable caption="The kitchen" told={kitchen} wordsOf={(name) => kitchenWords[name]} />
    </div>
  );
}

/** What is off by less than this can hardly be seen. */
const justVisible = 0.05;

function landedWords(landed: number, aimed: number): string {
  const off = landed / aimed - 1;
  const plan = `The plan was made for ${ebcOf(aimed)} EBC`;
  if (Math.abs(off) < justVisible) return `${plan}, and this pan landed there.`;
  return `${plan}: this pan landed ${Math.round(100 * Math.abs(off))} % ${off > 0 ? 'darker' : 'paler'}. Once real cooks have taught the kit, the next plan is made for this kitchen.`;
}

function share(part: number, whole: number): string {
  return whole > 0 ? `${Math.round((100 * part) / whole)} %` : 'no hold';
}

function Figure({ name, value }: { readonly name: string; readonly value: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd className="figure">{value}</dd>
    </div>
  );
}
