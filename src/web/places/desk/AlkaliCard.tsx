/** The alkali to prepare before the heat is on, and the parts that it goes in by. */
import type { AlkaliAmounts } from '../../../core/planning/amounts.ts';
import type { PlanCaution } from '../../../core/planning/cautions.ts';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { alkaliName, MixingCard } from './MixingCard.tsx';
import { sentence } from './sentence.ts';

interface AlkaliCardProps {
  readonly alkali: AlkaliAmounts;
  readonly cautions: readonly PlanCaution[];
}

export function AlkaliCard({ alkali, cautions }: AlkaliCardProps) {
  const { unit } = useTemperatureUnit();
  const { substance, strength, weighedKg, waterKg, parts } = alkali;
  return (
    <MixingCard
      heading="Alkali, prepared before the heat is on"
      substance={substance}
      strength={strength}
      amounts={[
        { name: `${alkaliName(substance)} as sold`, kg: weighedKg },
        { name: 'into cold water', kg: waterKg },
        { name: `gives ${parts.length} parts of`, kg: (weighedKg + waterKg) / parts.length },
      ]}
    >
      {cautions.map(({ id, message }) => (
        <p key={id} className="caution">
          {sentence(message, unit)}
        </p>
      ))}
    </MixingCard>
  );
}
