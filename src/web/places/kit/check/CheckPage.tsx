/** One check: how it is done, what was read, what that says, and keeping it. */
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { type CheckKind, checkKinds } from '../../../../core/learn/checks/check.ts';
import { checkWords } from '../../../../core/learn/words.ts';
import { useTitle } from '../../../parts/useTitle.ts';
import type { KitHand } from '../useKitInHand.ts';
import { HeatingCheck } from './HeatingCheck.tsx';
import { LagCheck } from './LagCheck.tsx';
import { PointCheck } from './PointCheck.tsx';
import { SpoonsCheck } from './SpoonsCheck.tsx';
import './check.css';

export function CheckPage({ hand, kind }: { readonly hand: KitHand; readonly kind: string }) {
  const known = checkKinds.find((each) => each === kind);
  const { record } = hand;
  useTitle(`${known ? checkWords[known] : 'Checks'} · Kit`);
  if (!record || !known) {
    return (
      <main id="main" className="kit">
        <h1>There is no such check</h1>
        <Link href="/kit">To the kits</Link>
      </main>
    );
  }
  return (
    <main id="main" className="kit check">
      <header className="kit-head">
        <p>
          <Link href={`/kit/${record.id}`} className="back">
            {record.kit.name}
          </Link>
        </p>
        <h1>{checkWords[known]}</h1>
      </header>
      {bodyOf(known, hand)}
    </main>
  );
}

function bodyOf(kind: CheckKind, hand: KitHand): ReactNode {
  switch (kind) {
    case 'boilingWater':
    case 'ice':
      return <PointCheck hand={hand} kind={kind} />;
    case 'lag':
      return <LagCheck hand={hand} />;
    case 'spoons':
      return <SpoonsCheck hand={hand} />;
    case 'heating':
    case 'dial':
      return <HeatingCheck hand={hand} kind={kind} />;
  }
}
