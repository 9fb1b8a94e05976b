/** Every deed in one tap. What the limits or the step don't allow is not to be tapped, and says why. */
import type { ReactNode } from 'react';
import type { DeedName, Opening } from '../../../core/advice/openDeeds.ts';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { useActs } from './acts.ts';
import { closedWords } from './closedWords.ts';
import { type Cook, deedWords, spoonName } from './deedWords.ts';
import { useGuard } from './useGuard.ts';
import type { View } from './view.ts';

interface DeedButtonsProps {
  readonly view: View;
  readonly cook: Cook;
  readonly mode: 'live' | 'rehearsal';
}

export function DeedButtons({ view, cook, mode }: DeedButtonsProps) {
  const acts = useActs();
  const { open, begun, notch, progress } = view;
  const guarded = useGuard(`${notch} ${progress.stepIndex} ${progress.partsGiven}`);
  const step = cook.steps[progress.stepIndex];
  const spoon = spoonName(cook.kit);
  const button = (name: DeedName, says: string, then?: ReactNode) => (
    <DeedButton key={name} says={says} opening={begun ? open[name] : notYet} guarded={guarded} then={then} />
  );
  const early = view.advice.kind !== 'next step' && view.advice.kind !== 'pour';
  const next = open.step.open ? deedWords(open.step.deed, cook) : 'Next step';
  return (
    <section className="deeds" aria-labelledby="deeds">
      <h2 id="deeds">Deeds</h2>
      <p className="small quiet">{begun ? deedsActWords[mode] : 'Open once the first card is done.'}</p>
      <div className="deed-grid">
        {step?.letDown
          ? button('portion', open.portion.open ? deedWords(open.portion.deed, cook) : 'Portion of hot water')
          : [button('spoonful', `One ${spoon} of cold water`), button('half', `Half a ${spoon}`)]}
        {button('lower', `Dial ${Math.max(0, notch - 1)}`, 'one down')}
        {button('raise', `Dial ${notch + 1}`, 'one up')}
        {button('off', 'Off the heat', 'dial to 0')}
        <AlkaliCell opening={begun ? open.alkali : notYet} cook={cook} guarded={guarded} />
        <button type="button" className="deed" disabled={!begun} onClick={guarded(() => acts.say('stir', {}))}>
          Stirred
          <span className="small">noted; the model takes the pan as stirred</span>
        </button>
        {open.step.open
          ? button('step', next, early ? 'before its time' : undefined)
          : button('pour', 'Pour', early ? 'before its time' : undefined)}
      </div>
    </section>
  );
}

const deedsActWords = {
  rehearsal: 'A deed acts on the hidden pan at once, as at a stove: there is no undo.',
  live: 'Tap what you have done. It can be undone for 10 s, and put right later.',
} as const;

const notYet: Opening = { open: false, because: 'nothing due' };

interface OneDeedProps {
  readonly opening: Opening;
  readonly guarded: (act: () => void) => () => void;
}

function DeedButton({
  says,
  opening,
  guarded,
  then,
}: OneDeedProps & { readonly says: string; readonly then: ReactNode }) {
  const { unit } = useTemperatureUnit();
  const acts = useActs();
  return (
    <button
      type="button"
      className="deed"
      aria-disabled={opening.open ? undefined : true}
      onClick={guarded(() => opening.open && acts.perform([opening.deed]))}
    >
      {says}
      <span className="small">{opening.open ? then : closedWords(opening, unit)}</span>
    </button>
  );
}

/** Alkali has no button at all but when a part may go in. */
function AlkaliCell({ opening, cook, guarded }: OneDeedProps & { readonly cook: Cook }) {
  const { unit } = useTemperatureUnit();
  const acts = useActs();
  if (!opening.open) {
    return (
      <p className="deed closed">
        Alkali
        <span className="small">{closedWords(opening, unit)}</span>
      </p>
    );
  }
  return (
    <button type="button" className="deed" onClick={guarded(() => acts.perform([opening.deed]))}>
      {deedWords(opening.deed, cook)}
      <span className="small">slowly, goggles on</span>
    </button>
  );
}
