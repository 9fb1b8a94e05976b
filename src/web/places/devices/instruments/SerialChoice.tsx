/** What has to be known of a serial thermometer before its port is opened. */
import { useState } from 'react';
import { patternTrouble } from '../../../../api/linePattern.ts';
import type { ReadingUnit } from '../../../../core/log/bodies.ts';
import { Choice } from '../../../parts/Choice.tsx';
import { Field } from '../../../parts/Field.tsx';
import { bauds, unitOptions } from '../inputs/inputWords.ts';
import type { Instrument } from './instrument.ts';
import { chooseSerial, type Serial } from './webSerial.ts';

interface SerialChoiceProps {
  readonly serial: Serial;
  readonly onChoose: (choosing: Promise<Instrument>) => void;
}

export function SerialChoice({ serial, onChoose }: SerialChoiceProps) {
  const [pattern, setPattern] = useState('{}');
  const [baud, setBaud] = useState<(typeof bauds)[number][0]>('9600');
  const [unit, setUnit] = useState<ReadingUnit>('Cel');
  const trouble = patternTrouble(pattern);
  return (
    <details>
      <summary>Serial thermometer</summary>
      <div className="devices-form">
        <Field
          name="serial-pattern"
          label="A line of it"
          text={pattern}
          onText={setPattern}
          hint="{} is the number, * anything: T={} C"
          trouble={trouble && `It ${trouble}.`}
        />
        <Choice label="Speed, baud" value={baud} options={bauds} onChoose={setBaud} />
        <Choice label="It sends" value={unit} options={unitOptions} onChoose={setUnit} />
        <button
          type="button"
          disabled={trouble !== undefined}
          onClick={() => onChoose(chooseSerial(serial, { baud: Number(baud), pattern, unit }))}
        >
          Choose its port
        </button>
      </div>
    </details>
  );
}
