/** Why the server's records are not to be had here, what follows from it, and the way to be let in where that is the reason. */
import { Link } from 'wouter';
import type { Reach } from '../records/reach.ts';

interface UnreachedProps {
  readonly reach: Exclude<Reach, 'reached'>;
  /** What follows, with its full stop. */
  readonly so: string;
}

export function Unreached({ reach, so }: UnreachedProps) {
  if (reach === 'away') return <>The server is not reached: {so}</>;
  if (reach === 'not shared') {
    return (
      <>
        One cook was shared with this device, and this was not: {so} <Link href="/pair">To the cook</Link>
      </>
    );
  }
  return (
    <>
      This device is not let in: {so} <Link href="/pair">Pair it</Link>
    </>
  );
}
