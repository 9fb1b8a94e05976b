/** The kit: which one, what it is, and keeping its changes. */
import { useEffect, useState } from 'react';
import type { KitRecord } from '../../../api/kit.ts';
import { formatSpoon } from '../../../core/units/formatSpoon.ts';
import { Choice } from '../../parts/Choice.tsx';
import { KeepKit } from '../../parts/kit/KeepKit.tsx';
import { KitFields, type KitFieldsProps } from '../../parts/kit/KitFields.tsx';
import { materialNames, stoveNames } from '../../parts/kit/kitNames.ts';
import type { KitKeeping } from '../../parts/kit/useKitKeeping.ts';

interface KitFormProps extends KitFieldsProps {
  readonly kits: readonly KitRecord[];
  readonly chosen: string | undefined;
  readonly onChoose: (id: string) => void;
  readonly keeping: KitKeeping;
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
      <KeepKit keeping={props.keeping} />
    </form>
  );
}
