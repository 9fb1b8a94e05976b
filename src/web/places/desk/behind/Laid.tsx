/** What the plan that lies behind differs in, or why it can't lie there. */
import type { Picture } from '../../../parts/panLine/picture.ts';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { sentence } from '../sentence.ts';
import { PlanDifferences } from './PlanDifferences.tsx';
import type { Behind } from './useBehind.ts';

interface LaidProps {
  readonly behind: Behind;
  readonly here: Picture;
}

export function Laid({ behind: { name, kitName, outcome }, here }: LaidProps) {
  const { unit } = useTemperatureUnit();
  if (!outcome) return <p role="status">Cooking “{name}”, to lay it behind.</p>;
  if (outcome.kind === 'failed')
    return (
      <p role="alert">
        “{name}” could not be computed: {outcome.message}
      </p>
    );
  if (outcome.kind === 'refused')
    return (
      <p role="alert">
        “{name}” can’t be cooked with {kitName ?? 'this kit'}.{' '}
        {outcome.refusals.map(({ message }) => sentence(message, unit)).join(' ')}
      </p>
    );
  return (
    <section className="laid screen" aria-label="Beside the plan that lies behind">
      <PlanDifferences here={here} behind={outcome.picture} name={name} />
      {kitName && (
        <p className="small quiet">
          “{name}” is cooked with {kitName}, the kit that it was made for.
        </p>
      )}
    </section>
  );
}
