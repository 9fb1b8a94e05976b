/** A table that may be wider than its place, and then scrolls by itself, by keys too. */
import type { ReactNode } from 'react';

export function WideTable({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: without it the keyboard could not scroll the table
    <section className="wide-table" aria-label={label} tabIndex={0}>
      {children}
    </section>
  );
}
