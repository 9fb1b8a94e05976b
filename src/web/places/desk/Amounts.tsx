/** What to weigh out, in the order of use. */
import type { Plan } from '../../../core/planning/plan.ts';
import { grams } from '../../parts/figures.ts';

export function Amounts({ plan }: { readonly plan: Plan }) {
  const { charge, alkali } = plan.amounts;
  const rows = [
    { name: 'Sugar', kg: charge.sucroseKg },
    { name: 'Water', kg: charge.waterKg },
    { name: 'Dry malt extract', kg: charge.maltExtractKg },
    { name: 'Citric acid', kg: charge.citricAcidKg },
    { name: 'Hot water, about', kg: plan.letDownWaterKg },
  ].filter(({ kg }) => kg > 0);
  const smallest = Math.min(...rows.map(({ kg }) => kg), alkali?.weighedKg ?? Number.POSITIVE_INFINITY);
  return (
    <section aria-labelledby="weigh">
      <h2 id="weigh">Weigh out</h2>
      <dl className="amounts">
        {rows.map(({ name, kg }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd className="figure">
              {grams(kg)} <span className="unit">g</span>
            </dd>
          </div>
        ))}
      </dl>
      {smallest < 0.01 && <p className="small quiet">The small amounts need a scale that shows 0.01 g.</p>}
    </section>
  );
}
