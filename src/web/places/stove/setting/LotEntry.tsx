/** The lot: its name, what the scale says, and the act that makes it. */
import { useState } from 'react';
import type { Range } from '../../../../core/twin/range.ts';
import { Field } from '../../../parts/Field.tsx';
import { grams, span } from '../../../parts/figures.ts';
import { isFarOff, nameTrouble, readWeight, weightTold } from './lotFields.ts';

export interface LotAnswers {
  readonly name: string;
  readonly weighedKg: number | null;
}

interface LotEntryProps {
  readonly plannedName: string;
  readonly expectedKg: Range;
  readonly onMake: (answers: LotAnswers) => void;
}

export function LotEntry({ plannedName, expectedKg, onMake }: LotEntryProps) {
  const [name, setName] = useState(plannedName);
  const [weight, setWeight] = useState('');
  const read = readWeight(weight);
  const wrongName = nameTrouble(name);
  const hint = read.kind === 'weight' ? weightTold(read.kg, expectedKg) : `expected ${span(expectedKg, grams)} g`;

  const far = read.kind === 'weight' && isFarOff(read.kg, expectedKg);
  const [sureOf, setSureOf] = useState<string>();

  function make() {
    // A slip of a digit is asked about once.
    if (far && sureOf !== weight) return setSureOf(weight);
    if (wrongName === undefined && read.kind !== 'wrong') {
      onMake({ name: name.trim(), weighedKg: read.kind === 'weight' ? read.kg : null });
    }
  }

  return (
    <section className="set-lot" aria-labelledby="set-lot">
      <h3 id="set-lot">The lot</h3>
      <Field
        name="lot-weight"
        label="Weight without the tray, in g (may stay empty)"
        text={weight}
        onText={setWeight}
        hint={hint}
        trouble={read.kind === 'wrong' ? read.trouble : undefined}
        keyboard="decimal"
      />
      <Field name="lot-name" label="Name" text={name} onText={setName} trouble={wrongName} />
      {far && sureOf === weight && (
        <p role="alert">
          Really {weight.trim()}? Expected: {span(expectedKg, grams)} g.
        </p>
      )}
      <button type="button" className="main" disabled={wrongName !== undefined || read.kind === 'wrong'} onClick={make}>
        {far && sureOf === weight ? `Yes, ${weight.trim()}: make the lot` : 'Make the lot'}
      </button>
    </section>
  );
}
