/** An alkali to mix with water: amounts, hazard class by strength, and how to mix it. */
import type { ReactNode } from 'react';
import { hazardOf } from '../../../core/advice/hazards.ts';
import { type Caution, mixingCautions } from '../../../core/planning/handling.ts';
import type { Alkali } from '../../../core/planning/request.ts';
import { DangerMark } from '../../parts/DangerMark.tsx';
import { grams, percent } from '../../parts/figures.ts';
import { CautionRules } from './CautionRules.tsx';

interface MixingCardProps {
  readonly heading: string;
  readonly substance: Alkali;
  readonly strength: number;
  /** What is weighed, in the order of use; a mass that is not known yet leaves its place empty. */
  readonly amounts: readonly { readonly name: string; readonly kg: number | undefined }[];
  /** Of this mixing alone. */
  readonly also?: readonly Caution[];
  /** Cautions, if any. */
  readonly children?: ReactNode;
}

export function MixingCard({ heading, substance, strength, amounts, also = [], children }: MixingCardProps) {
  const lye = substance === 'sodiumHydroxide';
  const { id, word, says } = hazardOf(substance, strength);
  return (
    <section aria-labelledby="alkali" className="alkali">
      <h2 id="alkali">{heading}</h2>
      <dl className="amounts">
        {amounts.map(({ name, kg }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd className="figure">
              {kg === undefined ? '\u00a0' : grams(kg)} <span className="unit">g</span>
            </dd>
          </div>
        ))}
      </dl>
      <div className="hazard" data-statement={id}>
        <DangerMark />
        <p>
          <strong className="signal">{word}</strong> A {percent(strength)} {lye ? 'solution' : 'slurry'}: {says}
        </p>
      </div>
      {children}
      <CautionRules of={[...mixingCautions(substance, strength), ...also]} />
    </section>
  );
}

export const alkaliName = (substance: Alkali): string =>
  substance === 'sodiumHydroxide' ? 'Sodium hydroxide' : 'Slaked lime';
