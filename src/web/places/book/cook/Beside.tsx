/** What hangs together with a cook: its plan, the lots that came of it, and the glasses that they went into. */
import { Link } from 'wouter';
import { useGlasses } from '../../../records/useGlasses.ts';
import { useLots } from '../../../records/useLots.ts';
import type { Cooked } from './useCook.ts';

export function Beside({ cooked }: { readonly cooked: Cooked }) {
  const { id, state } = cooked;
  const planId = state.begun?.body.planId;
  const lots = (useLots().data ?? []).filter(({ lot }) => lot.cookId === id);
  const ids = new Set(lots.map((lot) => lot.id));
  const glasses = (useGlasses().data ?? []).filter(({ glass }) =>
    glass.doses.some(({ sugar }) => sugar.kind === 'lot' && ids.has(sugar.lotId)),
  );
  if (!planId && lots.length === 0) return null;
  return (
    <nav className="book-beside" aria-label="Together with this cook">
      {planId && <Link href={`/?plan=${planId}`}>Its plan</Link>}
      {lots.map((lot) => (
        <Link key={lot.id} href={`/shelf/${lot.id}`}>
          Lot: {lot.lot.name}
        </Link>
      ))}
      {glasses.map((glass) => (
        <Link key={glass.id} href={`/glass/${glass.id}`}>
          Glass: {glass.glass.name}
        </Link>
      ))}
    </nav>
  );
}
