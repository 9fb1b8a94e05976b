/** Takes the lot that the address names, as `/glass?lot=…`, into the glass, once it is known. */
import { useEffect, useRef, useState } from 'react';
import { useSearch } from 'wouter';
import { useLots } from '../../records/useLots.ts';
import { puttingIn } from './sentLot.ts';
import type { GlassHand } from './useGlass.ts';
import type { Keeping } from './useKept.ts';

export function useSentLot({ draft, lots, setDoses }: GlassHand, { lay, say }: Keeping): void {
  const search = useSearch();
  const [lotId] = useState(() => new URLSearchParams(search).get('lot'));
  const isDone = useRef(false);
  const lot = lots.find(({ id }) => id === lotId)?.lot;
  const isListed = useLots().data !== undefined;

  // biome-ignore lint/correctness/useExhaustiveDependencies: what is in hand when the lot is found is what it goes into
  useEffect(() => {
    if (lotId === null || isDone.current || !(lot || isListed)) return;
    isDone.current = true;
    const putting = lot ? puttingIn(draft, lotId) : undefined;
    lay(putting?.kind === 'put' ? putting.into : draft, { replace: true });
    if (!lot) say({ says: 'That lot is not on the shelf.' });
    else if (putting?.kind === 'put') {
      setDoses(putting.doses);
      const into = putting.into === draft ? `“${draft.sheet.good.name}”` : 'a new beer';
      say({ says: `Put “${lot.name}” into ${into}.`, undo: () => lay(draft) });
    } else {
      const why = putting?.kind === 'full' ? 'does not fit: take a sugar out of this beer' : 'is in this beer already';
      say({ says: `“${lot.name}” ${why}.` });
    }
  }, [lotId, lot, isListed]);
}
