/** How much of the sugar is inverted, and what the user's own water does to it, against distilled water. */
import type { Kit } from '../../../../core/pan/kit.ts';
import type { Account } from '../../../../core/planning/account.ts';
import type { PlanRequest } from '../../../../core/planning/request.ts';
import type { Range } from '../../../../core/twin/range.ts';
import { grams } from '../../../parts/figures.ts';
import { distilledText, hardnessText, invertedText } from './accountWords.ts';

interface WaterViewProps {
  readonly account: Account | undefined;
  readonly water: Kit['water'];
  /** Share of the sugar that is inverted at the end. */
  readonly inverted: number;
  /** Its band, once the draws are there. */
  readonly band: Range | undefined;
  readonly request: PlanRequest;
}

export function WaterView({ account, water, inverted, band, request }: WaterViewProps) {
  const { alkalinityMgPerL, hardnessMgPerL } = water;
  return (
    <section aria-labelledby="own-water" className="own-water">
      <h2 id="own-water">Inversion and your water</h2>
      <p>{invertedText(inverted, band, request, alkalinityMgPerL)}</p>
      {alkalinityMgPerL === 0 ? (
        <p>The kit’s water has no alkalinity: it does to this plan what distilled water does.</p>
      ) : (
        <>
          <p className="own-water-first">{account ? distilledText(account.distilled) : '\u00a0'}</p>
          <p className="small quiet">
            Inversion runs on a little acid, and alkalinity uses it up.{' '}
            {account &&
              `The kit’s water, ${alkalinityMgPerL.toFixed(0)} mg/L as CaCO₃, brings as much base as ${grams(account.water.asNaohG / 1000)} g of NaOH.`}
          </p>
        </>
      )}
      {(account || hardnessMgPerL === undefined) && (
        <p className="small quiet">{hardnessText(account?.water.hardness)}</p>
      )}
    </section>
  );
}
