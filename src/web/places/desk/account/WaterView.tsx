/** What the user's own water does to this plan, against distilled water. */
import type { Kit } from '../../../../core/pan/kit.ts';
import type { Account } from '../../../../core/planning/account.ts';
import { grams, percent } from '../../../parts/figures.ts';
import { distilledText, hardnessText } from './accountWords.ts';

interface WaterViewProps {
  readonly account: Account | undefined;
  readonly water: Kit['water'];
  /** Share of the sugar that is inverted at the end. */
  readonly inverted: number;
}

export function WaterView({ account, water, inverted }: WaterViewProps) {
  const { alkalinityMgPerL, hardnessMgPerL } = water;
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
            As planned, {percent(inverted)} of the sugar is inverted at the end.
          </p>
        </>
      )}
      {(account || hardnessMgPerL === undefined) && (
        <p className="small quiet">{hardnessText(account?.water.hardness)}</p>
      )}
    </section>
  );
}
