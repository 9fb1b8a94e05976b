/** The kits that are kept, to open, and a new one. */
import { Link } from 'wouter';
import type { KitRecord } from '../../../api/kit.ts';

export function KitTabs({ kits, open }: { readonly kits: readonly KitRecord[]; readonly open: string | undefined }) {
  if (kits.length === 0) {
    return (
      <p className="quiet">None is saved yet. Say what you cook with, and save it: then it can be checked and learn.</p>
    );
  }
  return (
    <nav className="kit-tabs" aria-label="Kits">
      {kits.map(({ id, kit }) => (
        <Link key={id} href={`/kit/${id}`} aria-current={id === open ? 'page' : undefined}>
          {kit.name}
        </Link>
      ))}
      <Link href="/kit/new" aria-current={open === undefined ? 'page' : undefined}>
        + New kit
      </Link>
    </nav>
  );
}
