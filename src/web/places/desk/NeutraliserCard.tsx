/** The little alkali that neutralises a pale syrup once it is cool, mixed as any alkali is. */
import {
  type Neutraliser,
  neutraliseBelowC,
  neutralisedPh,
  neutralisingAmounts,
  neutralisingStrength,
} from '../../../core/planning/account/neutraliser.ts';
import type { Alkali } from '../../../core/planning/request.ts';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { degrees } from '../../parts/temperature.ts';
import { alkaliName, MixingCard } from './MixingCard.tsx';

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
      rules={
        <li>
          Into the syrup below {degrees(neutraliseBelowC, unit)} only, bit by bit, until a strip says pH {neutralisedPh}
          .
        </li>
      }
    />
  );
}
