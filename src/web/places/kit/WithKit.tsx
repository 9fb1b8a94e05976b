/** Waits for the kits, and says so when the one in the address is not there. */
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { Unreached } from '../../parts/Unreached.tsx';
import { type KitHand, useKitInHand } from './useKitInHand.ts';

interface WithKitProps {
  readonly id: string | undefined;
  readonly children: (hand: KitHand) => ReactNode;
}

export function WithKit({ id, children }: WithKitProps) {
  const { hand, isWaiting, isMissing } = useKitInHand(id);
  if (isWaiting) return <main id="main" className="kit" aria-busy="true" />;
  if (!isMissing) return children(hand);
  return (
    <main id="main" className="kit">
      <h1>This kit is not here</h1>
      <p>
        {hand.reach === 'reached' ? (
          'It may have been removed.'
        ) : (
          <Unreached reach={hand.reach} so="the kits are asked for again by themselves." />
        )}{' '}
        <Link href="/kit">To the kits</Link>
      </p>
    </main>
  );
}
