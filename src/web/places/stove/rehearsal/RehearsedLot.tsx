/** What came of a rehearsal, put on the shelf so that it can be tried in a glass; marked there as what does not exist. */
import { useState } from 'react';
import { Link } from 'wouter';
import { alkaliOfCook } from '../../../../core/lot/alkaliOfCook.ts';
import { lotOf } from '../../../../core/lot/lot.ts';
import { newId } from '../../../records/newId.ts';
import type { Cooked } from '../cooked.ts';
import { addLot } from '../setting/waitingLots.ts';

export function RehearsedLot({ cooked: { view, planned, entries } }: { readonly cooked: Cooked }) {
  const [kept, keep] = useState(false);
  const { poured } = view;
  if (!poured) return null;
  const { begun, name } = planned;

  function shelve(sugar: NonNullable<typeof poured>['sugar']) {
    const { id, ...lot } = lotOf({
      ...{ id: newId(), name: `Rehearsed: ${name}`.slice(0, 80), origin: 'rehearsed', cookId: null, planId: null },
      ...{ madeAt: new Date().toISOString(), weighedKg: null, alkali: alkaliOfCook(begun, entries), poured: sugar },
      form: begun.steps.some(({ kind }) => kind === 'letDown') ? 'syrup' : 'hard',
    });
    void addLot(id, lot);
    keep(true);
  }

  return kept ? (
    <p role="status">
      On the shelf, as rehearsed. <Link href="/glass">To the glass</Link>
    </p>
  ) : (
    <button type="button" onClick={() => shelve(poured.sugar)}>
      Try it in a glass
    </button>
  );
}
