/** A barometer's pressure turned into the altitude of the standard atmosphere at which it is the same: the cook boils by pressure. */
import { useState } from 'react';
import { altitudeAtPressureM } from '../../../core/matter/air.ts';
import { kitRanges } from '../../../core/pan/kit.ts';
import { parseQuantity } from '../../../core/units/parseQuantity.ts';
import { QuantityError } from '../../../core/units/quantityError.ts';
import { Field } from '../../parts/Field.tsx';

export function Barometer({ onAltitude }: { readonly onAltitude: (metres: number) => void }) {
  const [text, setText] = useState('');
  const read = text.trim() === '' ? undefined : altitudeOf(text);
  return (
    <Field
      name="barometer"
      label="Or by a barometer"
      hint="its pressure here, not reduced to the sea: 985 hPa; it sets the altitude"
      text={text}
      trouble={typeof read === 'string' ? read : undefined}
      onText={(typed) => {
        setText(typed);
        const found = altitudeOf(typed);
        if (typeof found === 'number') onAltitude(found);
      }}
    />
  );
}

function altitudeOf(text: string): number | string {
  const [low, high] = kitRanges.altitudeM;
  try {
    const metres = Math.round(altitudeAtPressureM(parseQuantity(text, 'pressure', 'hPa')));
    return metres >= low && metres <= high ? metres : 'No kitchen has this pressure. Allowed: 580 to 1060 hPa.';
  } catch (error) {
    if (error instanceof QuantityError || error instanceof RangeError) {
      return 'This is no pressure. Allowed: 580 to 1060 hPa.';
    }
    throw error;
  }
}
