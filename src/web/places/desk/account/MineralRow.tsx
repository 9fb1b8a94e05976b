/** The sodium or calcium that the alkali leaves in the sugar, and what of it a beer would have. */
import { isNeutralised } from '../../../../core/planning/account/neutraliser.ts';
import type { Account } from '../../../../core/planning/account.ts';
import type { PlanRequest } from '../../../../core/planning/request.ts';
import { judgedAtGPerL } from '../../../../core/planning/taste.ts';
import { Row } from './Row.tsx';

interface MineralRowProps {
  readonly account: Account | undefined;
  readonly request: PlanRequest;
}

export function MineralRow({ account, request }: MineralRowProps) {
  if (request.route === 'pale' && !isNeutralised(request)) return null;
  const sodium = request.alkali === 'sodiumHydroxide';
  const gPerKg = account && (sodium ? account.sodiumGPerKg : account.calciumGPerKg);
  const inBeer = gPerKg === undefined ? 0 : judgedAtGPerL * gPerKg;
  return (
    <Row
      name={sodium ? 'Sodium' : 'Calcium'}
      figure={gPerKg === undefined ? undefined : `${gPerKg.toFixed(2)} g in a kg`}
    >
      {gPerKg !== undefined &&
        `from the alkali; ${inBeer.toFixed(0)} mg/L in a beer with ${judgedAtGPerL} g/L of this sugar`}
    </Row>
  );
}
