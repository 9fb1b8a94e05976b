/** An address as a picture for a camera: dark on light in every theme, as cameras expect. */
import { encode } from 'uqr';

export function QrCode({ text, label }: { readonly text: string; readonly label: string }) {
  const { size, data } = encode(text, { ecc: 'M', border: 3 });
  const dark = data.flatMap((row, y) => row.flatMap((on, x) => (on ? [`M${x} ${y}h1v1h-1z`] : [])));
  return (
    <svg className="qr-code" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label} shapeRendering="crispEdges">
      <path d={`M0 0h${size}v${size}H0z`} className="qr-light" />
      <path d={dark.join('')} className="qr-dark" />
    </svg>
  );
}
