/** The lots that came of cooks which are laid over one another, beside each other. */
import { SideBySide } from '../../../parts/lots/SideBySide.tsx';
import { useLots } from '../../../records/useLots.ts';
import type { Overlaid } from './overlaid.ts';

export function TheirLots({ cooks }: { readonly cooks: readonly Overlaid[] }) {
  const all = useLots().data ?? [];
  const lots = cooks.flatMap(({ id }) => all.filter(({ lot }) => lot.cookId === id));
  if (lots.length < 2) return null;
  return (
    <section aria-labelledby="their-lots" className="their-lots">
      <h2 id="their-lots">What became of them</h2>
      <SideBySide lots={lots} />
    </section>
  );
}
