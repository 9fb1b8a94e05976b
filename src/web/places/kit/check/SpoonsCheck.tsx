/** Ten spoonfuls of water, weighed one by one. */
import { useState } from 'react';
import { formatSpoon } from '../../../../core/units/formatSpoon.ts';
import { Stepper } from '../../../parts/Stepper.tsx';
import type { KitHand } from '../useKitInHand.ts';
import { Noted } from './Noted.tsx';
import { Outcome } from './Outcome.tsx';
import { useHeld } from './useHeld.ts';

const fewest = 5;

export function SpoonsCheck({ hand }: { readonly hand: KitHand }) {
  const { id = '', kit } = hand.record ?? {};
  const spoonM3 = kit?.spoonM3 ?? 0;
  const [grams, setGrams] = useHeld<readonly number[]>(`umberpan.check.${id}.spoons`, []);
  const [shown, setShown] = useState(Math.round(spoonM3 * 1e7) / 10);
  const enough = grams.length >= fewest;
  return (
    <>
      <section className="doing">
        <ol className="steps">
          <li>Put a cup on a scale that shows 0.1 g.</li>
          <li>
            Take a spoonful of cold water ({formatSpoon(spoonM3)}) as you would at the stove: in a hurry, not level on
            purpose. Pour it in, note what the scale shows, press its zero.
          </li>
          <li>Ten times. Their mean tells what a spoonful brings, their scatter how far one can be trusted.</li>
        </ol>
        <Stepper label="This spoonful, g" value={shown} steps={[0.1, 1]} range={[0.1, 40]} onChange={setShown} />
        <button type="button" className="main big" onClick={() => setGrams([...grams, shown])}>
          Note this spoonful
        </button>
        <Noted
          label="Spoonfuls"
          texts={grams.map((g) => `${g.toFixed(1)} g`)}
          onStrike={(at) => setGrams(grams.filter((_, i) => i !== at))}
        />
      </section>
      <Outcome
        hand={hand}
        entry={enough ? { kind: 'spoons', spoonfulsKg: grams.map((g) => g / 1000) } : undefined}
        wants={`It takes ${fewest} spoonfuls; ten are better.`}
        onKept={() => setGrams([])}
      />
    </>
  );
}
