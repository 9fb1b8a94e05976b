/** Puts an entry right: it never happened, or it was another amount. What it said before stays in the log. */
import { useState } from 'react';
import type { AnyEntry } from '../../../core/log/corrections.ts';
import { readingAsReceived } from '../../../core/log/readingAsReceived.ts';
import { Stepper } from '../../parts/Stepper.tsx';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { inUnit } from '../../parts/temperature.ts';
import { type Cook, spoonName } from './deedWords.ts';

interface PutRightProps {
  readonly entry: AnyEntry;
  readonly cook: Cook;
  /** Undefined: it stays as it is; null: it never happened. */
  readonly onDone: (body: AnyEntry['body'] | null | undefined) => void;
}

interface Amount {
  readonly label: string;
  readonly value: number;
  readonly steps: readonly number[];
  readonly range: readonly [number, number];
  readonly bodyOf: (value: number) => AnyEntry['body'];
}

export function PutRight({ entry, cook, onDone }: PutRightProps) {
  const { unit } = useTemperatureUnit();
  const amount = amountOf(entry, cook, unit);
  const [value, setValue] = useState(amount?.value ?? 0);
  return (
    <div className="put-right">
      {amount && (
        <>
          <Stepper label={amount.label} value={value} steps={amount.steps} range={amount.range} onChange={setValue} />
          <button
            type="button"
            className="main"
            disabled={value === amount.value}
            onClick={() => onDone(amount.bodyOf(value))}
          >
            It was this
          </button>
        </>
      )}
      <button type="button" onClick={() => onDone(null)}>
        It never happened
      </button>
      <button type="button" onClick={() => onDone(undefined)}>
        Leave it
      </button>
    </div>
  );
}

function amountOf(entry: AnyEntry, { kit }: Cook, unit: 'C' | 'F'): Amount | undefined {
  switch (entry.kind) {
    case 'heat': {
      const most = kit.stove.notches;
      return { label: 'Dial', value: entry.body.notch, steps: [1], range: [0, most], bodyOf: (notch) => ({ notch }) };
    }
    case 'water': {
      const { spoonfuls, spoon } = entry.body;
      if (spoonfuls === 0) {
        const value = Math.round(entry.body.waterKg * 1000);
        const bodyOf = (g: number) => ({ waterKg: g / 1000, spoonfuls: 0, spoon });
        return { label: 'Hot water, g', value, steps: [1, 5], range: [0, 500], bodyOf };
      }
      const bodyOf = (count: number) => ({ waterKg: count * kit.spoonM3 * 1000, spoonfuls: count, spoon });
      return { label: `${spoonName(kit)}s`, value: spoonfuls, steps: [0.5], range: [0.5, 10], bodyOf };
    }
    case 'reading': {
      if (entry.body.valueC === null) return undefined;
      const value = Math.round(inUnit(entry.body.valueC, unit));
      const bodyOf = (shown: number) => ({
        ...readingAsReceived(entry.body.probe, shown, unit === 'C' ? 'Cel' : '[degF]'),
        quality: entry.body.quality,
      });
      return {
        label: `Thermometer, °${unit}`,
        value,
        steps: [1, 5],
        range: unit === 'C' ? [-20, 200] : [0, 400],
        bodyOf,
      };
    }
    default:
      return undefined;
  }
}
