/** A drop cooled in cold water or on a cold plate: its colour against computed swatches, and how it behaves. Tells the twin the colour. */
import { useState } from 'react';
import { type DropBehaviour, dropBehaviours } from '../../../core/log/bodies.ts';
import { Drop } from '../../parts/Drop.tsx';
import { ebcOf } from '../../parts/figures.ts';
import { likelyHueIndex } from '../../parts/syrupPaint.ts';
import { useActs } from './acts.ts';
import type { View } from './view.ts';

/** Darker from one swatch to the next by this factor: a step that is told by eye. */
const darker = 1.7;
const swatches = 7;
const palest = 0.02;

export function SpoonTest({ view }: { readonly view: View }) {
  const acts = useActs();
  const [isOpen, setOpen] = useState(false);
  const [a430, setA430] = useState<number | null>(null);
  const [behaviour, setBehaviour] = useState<DropBehaviour | null>(null);
  const [levels, setLevels] = useState<readonly number[]>([]);
  const { unseen } = view;
  const open = () => {
    // The row stays as it is while the drop cools, with the twin's middle in the middle.
    const middle = Math.max(palest * darker ** 3, unseen.a430.mid);
    setLevels(Array.from({ length: swatches }, (_, i) => middle * darker ** (i - (swatches - 1) / 2)));
    setA430(null);
    setBehaviour(null);
    setOpen(true);
  };
  if (!isOpen) {
    return (
      <section className="spoon-test" aria-labelledby="spoon-test">
        <h2 id="spoon-test">Spoon test</h2>
        <button type="button" disabled={!view.begun} onClick={open}>
          Compare a drop
        </button>
      </section>
    );
  }
  const waterShare = Math.min(1, Math.max(0, unseen.waterShare.mid));
  const keep = () => {
    acts.say('spoonTest', { a430, behaviour, taste: [] });
    setOpen(false);
  };
  return (
    <section className="spoon-test" aria-labelledby="spoon-test">
      <h2 id="spoon-test">Spoon test</h2>
      <p className="small">
        A drop from the tip of a long spoon into cold water or onto a cold plate. Never touch or taste hot sugar: only
        when it is cold.
      </p>
      <fieldset>
        <legend>Colour of the drop, on white</legend>
        <div className="swatches">
          {levels.map((level) => (
            <button
              key={level}
              type="button"
              aria-pressed={a430 === level}
              aria-label={`${ebcOf(level)} EBC`}
              onClick={() => setA430(a430 === level ? null : level)}
            >
              <Drop tone={{ a430: level, hueIndex: likelyHueIndex(level), waterShare }} size={44} />
              <span className="small">{ebcOf(level)}</span>
            </button>
          ))}
        </div>
        <p className="small quiet">EBC of a 10 % solution. Computed; screens differ, so it counts for little.</p>
      </fieldset>
      <fieldset>
        <legend>Cooled in water, the drop</legend>
        <div className="choices">
          {dropBehaviours.map((each) => (
            <button
              key={each}
              type="button"
              aria-pressed={behaviour === each}
              onClick={() => setBehaviour(behaviour === each ? null : each)}
            >
              {each}
            </button>
          ))}
        </div>
      </fieldset>
      <p className="buttons">
        <button type="button" className="main" disabled={a430 === null && behaviour === null} onClick={keep}>
          Keep the test
        </button>
        <button type="button" onClick={() => setOpen(false)}>
          Leave it
        </button>
      </p>
    </section>
  );
}
