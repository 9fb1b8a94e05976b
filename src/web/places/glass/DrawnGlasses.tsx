/** The beer in its glass without and with the sugars, in the computed colours, and how sure that is; the numbers stand beside. */
import type { Given } from '../../../core/beer/given.ts';
import type { Srgb } from '../../../core/colour/srgb.ts';
import { colourFactor, digits, type GlassUnits, reachShown } from './shown.ts';

interface DrawnProps {
  readonly given: Given;
  readonly units: GlassUnits;
}

export function DrawnGlasses({ given, units }: DrawnProps) {
  const { drawn, beer, without } = given;
  const { low, mid, high } = drawn.withSugars;
  const show = digits(1, colourFactor(units));
  const clipped = [drawn.without, low, mid, high].some((srgb) => srgb.clipped);
  const reach = reachShown(beer.a430PerCm, show);
  return (
    <figure className="drawn">
      <div className="tumblers">
        <Tumbler srgb={drawn.without} />
        <Tumbler srgb={mid} />
      </div>
      <div className="tumbler-words">
        <p>
          <span className="quiet small">Without</span>
          <strong>
            {show(without.a430PerCm.mid)} {units.colour}
          </strong>
        </p>
        <p>
          <span className="quiet small">With its sugars</span>
          <strong>
            {show(beer.a430PerCm.mid)} {units.colour}
          </strong>
          {reach && (
            <span className="small">
              8 in 10: {reach}
              <span className="ends">
                <Ends colours={[low, mid, high]} />
              </span>
            </span>
          )}
        </p>
      </div>
      <figcaption className="small quiet">
        Daylight through {Number(drawn.pathCm.toPrecision(3))} cm. They differ by {digits(1)(drawn.difference)}{' '}
        (CIEDE2000; about 1 is just visible side by side).
        {clipped && ' Darker or more saturated than a screen can show.'}
      </figcaption>
    </figure>
  );
}

/** On white, as it is held against a white wall. */
function Tumbler({ srgb }: { readonly srgb: Srgb }) {
  return (
    <svg viewBox="0 0 120 160" aria-hidden="true">
      <rect width="120" height="160" fill="#fff" stroke="var(--rule-strong)" />
      <path d="M24.3 34 L32 146 H88 L95.7 34 Z" fill={css(srgb)} />
      <path d="M22 14 L31 148 H89 L98 14" fill="none" stroke="#5c554e" strokeWidth="2" />
    </svg>
  );
}

function Ends({ colours }: { readonly colours: readonly Srgb[] }) {
  return (
    <svg viewBox="0 0 90 24" width="90" height="24" preserveAspectRatio="none" aria-hidden="true">
      {colours.map((srgb, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: palest, middle and darkest
        <rect key={at} x={at * 30} width="30" height="24" fill={css(srgb)} />
      ))}
    </svg>
  );
}

function css({ r, g, b }: Srgb): string {
  return `rgb(${r} ${g} ${b})`;
}
