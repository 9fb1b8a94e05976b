/** What a kg costs to make, against one that is bought; where no price is typed, so much is said, with the way to type it. */
import { Link } from 'wouter';
import type { Cost } from '../../../../core/planning/account/cost.ts';
import { batchText, unpricedText } from './accountWords.ts';
import { Row } from './Row.tsx';

interface CostRowProps {
  /** False until the plan's account is there. */
  readonly known: boolean;
  readonly cost: Cost | undefined;
  /** Price of a kg of bought sugar. */
  readonly bought: number | undefined;
  readonly kitHref: string;
}

export function CostRow({ known, cost, bought, kitHref }: CostRowProps) {
  if (!known) return <Row name="Cost" figure={undefined} />;
  const unpriced = cost && unpricedText(cost, bought);
  return (
    <Row name="Cost" figure={cost ? `${cost.perKg.toFixed(2)} a kg` : 'No prices typed'}>
      {cost && batchText(cost, bought)}
      {(!cost || unpriced) && (
        <span className="account-unpriced">
          {unpriced} <Link href={kitHref}>Type prices on the Kit page</Link>
        </span>
      )}
    </Row>
  );
}
