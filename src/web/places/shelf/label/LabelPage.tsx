/** A lot's label, to print: its name and figures, and a QR code that leads back to it on this server. */
import { useState } from 'react';
import { Link } from 'wouter';
import { Picks } from '../../../parts/Picks.tsx';
import { Stepper } from '../../../parts/Stepper.tsx';
import { useTitle } from '../../../parts/useTitle.ts';
import { useLot } from '../../../records/useLots.ts';
import { shownOf } from '../shown.ts';
import { Label } from './Label.tsx';
import { type Size, sizes } from './sizes.ts';
import './label.css';

const options = (Object.keys(sizes) as Size[]).map((value) => {
  const { name, widthMm, heightMm } = sizes[value];
  return { value, name, says: `${widthMm} × ${heightMm} mm` };
});
/** As many as fit on a sheet of the smallest. */
const mostCopies = 24;

export function LabelPage({ id }: { readonly id: string }) {
  const { data } = useLot(id);
  const [size, setSize] = useState<Size>('jar');
  const [copies, setCopies] = useState(1);
  useTitle(data ? `Label of ${data.lot.name}` : 'Label');
  const address = `${location.origin}/shelf/${id}`;
  const shown = data && shownOf(data);
  return (
    <main id="main" className="shelf label-page">
      <header className="shelf-head screen">
        <div>
          <Link href={`/shelf/${id}`} className="back">
            {data?.lot.name ?? 'The lot'}
          </Link>
          <h1>Label</h1>
        </div>
      </header>
      <div className="screen label-choices">
        <Picks legend="Size" value={size} options={options} onPick={setSize} row />
        <Stepper
          label="Copies"
          value={copies}
          steps={[1]}
          range={[1, mostCopies]}
          onChange={(n) => setCopies(Math.round(n))}
        />
        <p className="small">
          The code leads to <span className="address">{address}</span>. A phone reaches that only where it reaches this
          server; everything that matters is in words as well.
          {/^https?:\/\/(localhost|127\.)/.test(address) && (
            <strong>
              {' '}
              This address is this machine’s own: open the Shelf by the machine’s name in your network, then print.
            </strong>
          )}
        </p>
        <button type="button" className="main" onClick={() => window.print()}>
          Print
        </button>
      </div>
      {shown && (
        <div className="labels">
          {Array.from({ length: copies }, (_, copy) => copy).map((copy) => (
            <Label key={copy} shown={shown} size={size} address={address} hidden={copy > 0} />
          ))}
        </div>
      )}
    </main>
  );
}
