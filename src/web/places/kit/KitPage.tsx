/** One kit: what is known of it and from where, what it is, and the ways to know it better. */
import { Link } from 'wouter';
import { defaultKit } from '../../../core/pan/kit.ts';
import { Unreached } from '../../parts/Unreached.tsx';
import { useTitle } from '../../parts/useTitle.ts';
import { CheckList } from './CheckList.tsx';
import { Forgetting } from './Forgetting.tsx';
import { KitEntry } from './KitEntry.tsx';
import { KitTabs } from './KitTabs.tsx';
import { KnownTable } from './KnownTable.tsx';
import { Lessons } from './Lessons.tsx';
import { stoveSource } from './priors.ts';
import type { KitHand } from './useKitInHand.ts';

export function KitPage({ hand }: { readonly hand: KitHand }) {
  const { record, reach } = hand;
  const kit = record?.kit ?? defaultKit;
  useTitle(`${record ? kit.name : 'New kit'} · Kit`);
  return (
    <main id="main" className="kit">
      <header className="kit-head">
        <h1>{record ? kit.name : 'New kit'}</h1>
        <KitTabs kits={hand.kits} open={record?.id} />
        {reach !== 'reached' && (
          <p className="kit-note" role="status">
            <Unreached reach={reach} so="nothing can be kept just now." />
          </p>
        )}
      </header>
      {record && (
        <section className="kit-known">
          <KnownTable kit={kit} />
          <p className="small quiet">
            One true value in five lies outside its range. Before anything is learned, the ranges are those of any such
            kit: {stoveSource(kit)}.
          </p>
          <Lessons learned={kit.learned} />
          {kit.learned && <Forgetting hand={hand} record={record} />}
        </section>
      )}
      <div className="kit-side">
        {record && (
          <section aria-labelledby="know-better" className="kit-better">
            <h2 id="know-better">Know it better</h2>
            <CheckList id={record.id} learned={kit.learned} />
            <p className="kit-ways">
              <Link className="button" href={`/kit/${record.id}/learn`}>
                Learn from a cook
              </Link>
              <Link className="button" href={`/kit/${record.id}/import`}>
                Import a cook
              </Link>
            </p>
          </section>
        )}
        <KitEntry hand={hand} />
      </div>
    </main>
  );
}
