/** What holds for the whole of a cook. */
import { Link } from 'wouter';
import { cautionsFor, cookingCautions } from '../../../core/planning/handling.ts';
import type { Plan } from '../../../core/planning/plan.ts';
import { DangerMark } from '../../parts/DangerMark.tsx';
import { Sources } from '../../parts/Sources.tsx';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { CautionRules } from './CautionRules.tsx';
import { inUnitOf } from './sentence.ts';

export function Cautions({ plan }: { readonly plan: Plan }) {
  const { unit } = useTemperatureUnit();
  const cautions = cookingCautions(plan).map((each) => ({ ...each, text: inUnitOf(each.text, unit) }));
  return (
    <section aria-labelledby="cautions" className="cautions">
      <h2 id="cautions">
        <DangerMark /> Before the heat is on
      </h2>
      <CautionRules of={cautions} />
      <div className="screen">
        <p>
          <Link href="/care">Burned, splashed, or a pan on fire: Care</Link>
        </p>
        <Sources of={cautionsFor(plan)} />
      </div>
    </section>
  );
}
