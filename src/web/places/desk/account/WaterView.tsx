/** What the user's own water does to this plan, against distilled water. */
import type { Account } from '../../../../core/planning/account.ts';
import { grams, percent } from '../../../parts/figures.ts';
import { distilledText } from './accountWords.ts';

interface WaterViewProps {
  readonly account: Account | undefined;
  readonly alkalinityMgPerL: number;
  /** Share of the sugar that is inverted at the end. */
  readonly inverted: number;
}

export function WaterView({ account, alkalinityMgPerL, inverted }: WaterViewProps) {
  return (
    <section aria-labelledby="own-water" className="own-water">
      <h2 id="own-water">Your water</h2>
      {alkalinityMgPerL === 0 ? (
        <p>The kit’s water has no alkalinity: it does to this plan what distilled water does.</p>
      ) : (
        <>
          <p className="own-water-first">{account ? distilledText(account.distilled) : '\u00a0'}</p>
          <p className="small quiet">
            Inversion runs on a little acid, and alkalinity uses it up.{' '}
            {account &&
              `The kit’s water, ${alkalinityMgPerL.toFixed(0)} mg/L as CaCO₃, brings as much base as ${grams(account.water.asNaohG / 1000)} g of NaOH.`}{' '}
            What else makes water hard changes nothing in this model. As planned, {percent(inverted)} of the sugar is
            inverted at the end.
          </p>
        </>
      )}
    </section>
  );
}
