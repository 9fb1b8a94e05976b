/** An alkali to mix with water: amounts, hazard class by strength, and how to mix it. */
import type { ReactNode } from 'react';
import { lyeClass } from '../../../core/advice/limits.ts';
import type { Alkali } from '../../../core/planning/request.ts';
import { DangerMark } from '../../parts/DangerMark.tsx';
import { grams, percent } from '../../parts/figures.ts';
import { hazardOf } from './hazard.ts';

interface MixingCardProps {
  readonly heading: string;
  readonly substance: Alkali;
  readonly strength: number;
  /** What is weighed, in the order of use; a mass that is not known yet leaves its place empty. */
  readonly amounts: readonly { readonly name: string; readonly kg: number | undefined }[];
  /** Rules of this mixing alone. */
  readonly rules?: ReactNode;
  /** Cautions, if any. */
  readonly children?: ReactNode;
}

export function MixingCard({ heading, substance, strength, amounts, rules, children }: MixingCardProps) {
  const lye = substance === 'sodiumHydroxide';
  const { word, says } = hazardOf(substance, lyeClass(strength));
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
      <div className="hazard">
        <DangerMark />
        <p>
          <strong className="signal">{word}</strong> A {percent(strength)} {lye ? 'solution' : 'slurry'}: {says}
        </p>
      </div>
      {children}
      <ul className="rules">
        <li>Read the safety data sheet of your own alkali first; weigh it on a scale that shows 0.01 g.</li>
        <li>
          <strong>{lye ? 'Lye into water, never water onto lye.' : 'Lime into water, never water onto lime.'}</strong>{' '}
          {lye ? 'Little by little, stirring; it heats up.' : 'Stir again before each part: it settles.'}
        </li>
        <li>Goggles and nitrile gloves on, sleeves down, until it is all in the pan and the vessel is rinsed.</li>
        <li>Stainless steel or PP. Never aluminium: it gives off hydrogen; nor glass: heat may crack it.</li>
        {rules}
      </ul>
    </section>
  );
}

export const alkaliName = (substance: Alkali): string =>
  substance === 'sodiumHydroxide' ? 'Sodium hydroxide' : 'Slaked lime';
