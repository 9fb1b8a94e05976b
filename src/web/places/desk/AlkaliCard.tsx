/** The alkali to prepare before the heat is on: amounts, hazard class by strength, and how to mix it. */
import { lyeClass } from '../../../core/advice/limits.ts';
import type { AlkaliAmounts } from '../../../core/planning/amounts.ts';
import type { PlanCaution } from '../../../core/planning/cautions.ts';
import { DangerMark } from '../../parts/DangerMark.tsx';
import { grams, percent } from '../../parts/figures.ts';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { hazardOf } from './hazard.ts';
import { sentence } from './sentence.ts';

interface AlkaliCardProps {
  readonly alkali: AlkaliAmounts;
  readonly cautions: readonly PlanCaution[];
}

export function AlkaliCard({ alkali, cautions }: AlkaliCardProps) {
  const { unit } = useTemperatureUnit();
  const lye = alkali.substance === 'sodiumHydroxide';
  const count = alkali.parts.length;
  const { word, says } = hazardOf(alkali.substance, lyeClass(alkali.strength));
  return (
    <section aria-labelledby="alkali" className="alkali">
      <h2 id="alkali">Alkali, prepared before the heat is on</h2>
      <dl className="amounts">
        <div>
          <dt>{lye ? 'Sodium hydroxide' : 'Slaked lime'} as sold</dt>
          <dd className="figure">
            {grams(alkali.weighedKg)} <span className="unit">g</span>
          </dd>
        </div>
        <div>
          <dt>into cold water</dt>
          <dd className="figure">
            {grams(alkali.waterKg)} <span className="unit">g</span>
          </dd>
        </div>
        <div>
          <dt>gives {count} parts of</dt>
          <dd className="figure">
            {grams((alkali.weighedKg + alkali.waterKg) / count)} <span className="unit">g</span>
          </dd>
        </div>
      </dl>
      <div className="hazard">
        <DangerMark />
        <p>
          <strong className="signal">{word}</strong> A {percent(alkali.strength)} {lye ? 'solution' : 'slurry'}: {says}
        </p>
      </div>
      {cautions.map(({ id, message }) => (
        <p key={id} className="caution">
          {sentence(message, unit)}
        </p>
      ))}
      <ul className="rules">
        <li>Read the safety data sheet of your own alkali first.</li>
        <li>
          <strong>{lye ? 'Lye into water, never water onto lye.' : 'Lime into water, never water onto lime.'}</strong>{' '}
          {lye ? 'Little by little, stirring; it heats up.' : 'Stir again before each part: it settles.'}
        </li>
        <li>Goggles and gloves on, sleeves down, until it is all in the pan and the vessel is rinsed.</li>
        <li>Stainless steel or polypropylene. Never aluminium: it gives off hydrogen.</li>
      </ul>
    </section>
  );
}
