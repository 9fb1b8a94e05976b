/** The kit: which one, what it is, and keeping its changes. */
import { useEffect, useState } from 'react';
import type { KitRecord } from '../../../api/kit.ts';
import type { Kit } from '../../../core/pan/kit.ts';
import { formatSpoon } from '../../../core/units/formatSpoon.ts';
import { Choice } from '../../parts/Choice.tsx';
import type { Entries, Sheet } from '../../parts/entry.ts';
import { KitFields } from './KitFields.tsx';
import { KitKeeping } from './KitKeeping.tsx';
import { materialNames, stoveNames } from './kitNames.ts';
import type { KeptKits } from './useKeptKits.ts';

export interface KitFormProps {
  readonly sheet: Sheet<Kit>;
  readonly entries: Entries<Kit>;
  readonly refusals: Readonly<Record<string, string>>;
  readonly onText: (field: string, text: string) => void;
  readonly onChange: (kit: Kit) => void;
  readonly kits: readonly KitRecord[];
  readonly chosen: string | undefined;
  readonly onChoose: (id: string) => void;
  readonly keeping: KeptKits;
}

const unkept = '';

export function KitForm(props: KitFormProps) {
  const { sheet, kits, chosen, onChoose, refusals } = props;
  const { stove, pan, spoonM3 } = sheet.good;
  const refused = Object.keys(refusals).some((field) => field.startsWith('pan.') || field === 'spoonM3');
  const [open, setOpen] = useState(false);
  useEffect(() => {
    if (refused) setOpen(true);
  }, [refused]);
  return (
    <form className="sheet" aria-label="Kit" onSubmit={(event) => event.preventDefault()}>
      <h2>Kit</h2>
      {kits.length > 0 && (
        <Choice
          label="Cook with"
          value={chosen ?? unkept}
          options={[
            ...(chosen ? [] : ([[unkept, `${sheet.good.name} (not saved)`]] as const)),
            ...kits.map(({ id, kit }) => [id, kit.name] as const),
          ]}
          onChoose={(id) => id !== unkept && onChoose(id)}
        />
      )}
      <p className="quiet small">
        {stoveNames[stove.kind]}, {stove.ratedPowerW} W; {materialNames[pan.material].toLowerCase()} pan of{' '}
        {(pan.diameterM * 100).toFixed(0)} cm; spoon of {formatSpoon(spoonM3)}
      </p>
      {/* A refusal opens it; mending the refusal must not close it under the hand. */}
      <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>Change the kit</summary>
        <KitFields {...props} />
      </details>
      <KitKeeping keeping={props.keeping} />
    </form>
  );
}
