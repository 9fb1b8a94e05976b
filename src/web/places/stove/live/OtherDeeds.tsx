/** What was done beside what is advised: the log takes what happened, not what should have. */
import { useState } from 'react';
import { PictureFile } from '../../../parts/PictureFile.tsx';
import { Stepper } from '../../../parts/Stepper.tsx';
import { useActs } from '../acts.ts';
import { type Cook, deedWords } from '../deedWords.ts';
import type { View } from '../view.ts';

/** Litres of water weigh as many kg; a tablespoon is three teaspoons (US customary). */
const waterMeasures = [
  { name: 'Teaspoons', kgEach: 0.00493, most: 12, step: 0.5 },
  { name: 'Tablespoons', kgEach: 0.01479, most: 12, step: 0.5 },
  { name: 'mL', kgEach: 0.001, most: 500, step: 5 },
] as const;

/** Characters that the log takes. */
const longestReference = 200;

export function OtherDeeds({ view, cook }: { readonly view: View; readonly cook: Cook }) {
  return (
    <details className="other-deeds">
      <summary>Something else was done</summary>
      <div className="other-grid">
        <DialSet view={view} cook={cook} />
        <WaterAdded view={view} cook={cook} />
        <AlkaliGiven cook={cook} />
        <StepBegun cook={cook} />
        <Note />
        <Picture />
      </div>
    </details>
  );
}

function DialSet({ view, cook }: { readonly view: View; readonly cook: Cook }) {
  const acts = useActs();
  const [notch, setNotch] = useState(view.notch);
  return (
    <div>
      <Stepper label="Dial" value={notch} steps={[1]} range={[0, cook.kit.stove.notches]} onChange={setNotch} />
      <button type="button" onClick={() => acts.say('heat', { notch })}>
        Dial was set to {notch}
      </button>
    </div>
  );
}

function WaterAdded({ view, cook }: { readonly view: View; readonly cook: Cook }) {
  const acts = useActs();
  const [which, setWhich] = useState(0);
  const [count, setCount] = useState(1);
  const measure = waterMeasures[which] ?? waterMeasures[0];
  const hot = cook.steps[view.progress.stepIndex]?.letDown !== undefined;
  const waterKg = count * measure.kgEach;
  return (
    <div>
      <div className="choices">
        {waterMeasures.map(({ name, step }, i) => (
          <button
            key={name}
            type="button"
            aria-pressed={i === which}
            onClick={() => {
              setWhich(i);
              setCount(Math.max(1, step));
            }}
          >
            {name}
          </button>
        ))}
      </div>
      <Stepper
        label={`${hot ? 'Hot' : 'Cold'} water, ${measure.name.toLowerCase()}`}
        value={count}
        steps={[measure.step]}
        range={[measure.step, measure.most]}
        onChange={setCount}
      />
      <button
        type="button"
        onClick={() =>
          acts.say('water', {
            waterKg,
            // Hot water is measured, cold water is spooned.
            spoonfuls: hot ? 0 : waterKg / (cook.kit.spoonM3 * 1000),
            spoon: measure.name.toLowerCase(),
          })
        }
      >
        This water went in
      </button>
    </div>
  );
}

function AlkaliGiven({ cook }: { readonly cook: Cook }) {
  const acts = useActs();
  const step = cook.steps.find(({ alkali }) => alkali.length > cook.partsGiven);
  const part = step?.alkali[cook.partsGiven];
  if (!part) return null;
  return (
    <div>
      <button type="button" onClick={() => acts.perform([{ kind: 'alkali', part }])}>
        Part {cook.partsGiven + 1} of the alkali went in
      </button>
    </div>
  );
}

function StepBegun({ cook }: { readonly cook: Cook }) {
  const acts = useActs();
  return (
    <div className="choices">
      {cook.steps.map((_, index) =>
        index === cook.stepIndex ? null : (
          // biome-ignore lint/suspicious/noArrayIndexKey: the steps of a cook never change
          <button key={index} type="button" onClick={() => acts.perform([{ kind: 'step', index }])}>
            {deedWords({ kind: 'step', index }, cook)}
          </button>
        ),
      )}
    </div>
  );
}

function Note() {
  const acts = useActs();
  const [text, setText] = useState('');
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        if (text.trim() === '') return;
        acts.say('note', { text: text.trim() });
        setText('');
      }}
    >
      <label>
        Note
        <textarea rows={2} maxLength={2000} value={text} onChange={({ target }) => setText(target.value)} />
      </label>
      <button type="submit" disabled={text.trim() === ''}>
        Keep the note
      </button>
    </form>
  );
}

/** The picture stays where it was taken: the log says when there was one, and how to find it. */
function Picture() {
  const acts = useActs();
  return (
    <div>
      <PictureFile name="Note a picture" onFile={({ name }) => acts.say('photo', { reference: referenceOf(name) })} />
      <p className="small quiet">It stays on this device. The log keeps its name and the time.</p>
    </div>
  );
}

const referenceOf = (name: string): string =>
  name
    .replace(/\p{Cc}/gu, '')
    .trim()
    .slice(0, longestReference) || 'a picture';
