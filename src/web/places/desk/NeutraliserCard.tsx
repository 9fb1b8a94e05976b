/** The little alkali that neutralises a pale syrup once it is cool, mixed as any alkali is. */
import {
  type Neutraliser,
  neutralisingAmounts,
  neutralisingStrength,
} from '../../../core/planning/account/neutraliser.ts';
import { neutralisingCaution } from '../../../core/planning/handling.ts';
import type { Alkali } from '../../../core/planning/request.ts';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { alkaliName, MixingCard } from './MixingCard.tsx';
import { inUnitOf } from './sentence.ts';

interface NeutraliserCardProps {
  readonly substance: Alkali;
  /** Not there at once: the names of what is weighed are. */
  readonly neutraliser: Neutraliser | undefined;
}

export function NeutraliserCard({ substance, neutraliser }: NeutraliserCardProps) {
  const { unit } = useTemperatureUnit();
  const amounts = neutraliser && neutralisingAmounts(substance, neutraliser);
  return (
    <MixingCard
      heading="Alkali, to neutralise the syrup"
      substance={substance}
      strength={neutralisingStrength}
      amounts={[
        { name: `${alkaliName(substance)}, pure`, kg: amounts?.pureKg },
        { name: 'into cold water', kg: amounts?.waterKg },
      ]}
      also={[{ ...neutralisingCaution, head: inUnitOf(neutralisingCaution.head, unit) }]}
    />
  );
}
