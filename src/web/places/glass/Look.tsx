/** How the beer looks without and with its sugars, its colour by two ways, and what they cost. */
import type { Given } from '../../../core/beer/given.ts';
import type { Glass } from '../../../core/beer/glass.ts';
import { timesRange } from '../../../core/beer/uncertain.ts';
import { a430FromSrm } from '../../../core/colour/scales.ts';
import { DrawnGlasses } from './DrawnGlasses.tsx';
import { Minerals } from './Minerals.tsx';
import { bracketed, colourFactor, digits, type GlassUnits, reachShown } from './shown.ts';

interface LookProps {
  readonly glass: Glass;
  readonly given: Given;
  readonly units: GlassUnits;
}

export function Look({ glass, given, units }: LookProps) {
  return (
    <>
      <DrawnGlasses given={given} units={units} />
      <Colours given={given} units={units} />
      <Minerals glass={glass} given={given} />
      <Cost given={given} />
    </>
  );
}

/** The computed colour and the trade's empirical one, and where the two part. */
function Colours({ given: { beer, empirical }, units }: Omit<LookProps, 'glass'>) {
  const { srm: beside, outside, partsFromGPerL } = empirical;
  const show = digits(1, colourFactor(units));
  const within = reachShown(beer.a430PerCm, show);
  const empirically = timesRange(beside, a430FromSrm(1));
  const besideWithin = reachShown(empirically, show);
  return (
    <section className="beside" aria-labelledby="glass-colours">
      <h2 id="glass-colours">Colour by two ways</h2>
      <p>
        By spectra{' '}
        <strong>
          {show(beer.a430PerCm.mid)} {units.colour}
        </strong>
        {bracketed(within)}; by the trade's empirical formula{' '}
        <strong>
          {show(empirically.mid)} {units.colour}
        </strong>
        {bracketed(besideWithin)}
        {outside && ', beyond the 50 SRM that it was fitted to'}.
      </p>
      <p className="quiet small">
        {partsFromGPerL === null
          ? 'At this dose the two agree within a tenth.'
          : `They part by a tenth from ${partsFromGPerL.toFixed(1)} g of sugar per litre on: a clear sugar colours in proportion, the formula was fitted to malt.`}
      </p>
    </section>
  );
}

function Cost({ given: { cost } }: Pick<LookProps, 'given'>) {
  const money = digits(2);
  const litre = digits(3);
  return (
    <section className="beside" aria-labelledby="glass-cost">
      <h2 id="glass-cost">Cost of the sugars</h2>
      {cost === null ? (
        <p className="quiet small">Say the price of each sugar to have it.</p>
      ) : (
        <p>
          <strong>{money(cost.sugars.mid)}</strong>, {litre(cost.perLitre.mid)} a litre
          {bracketed(reachShown(cost.perLitre, litre))}
          {cost.bought && `; the same solids bought ${money(cost.bought.mid)}`}
          {cost.bought && bracketed(reachShown(cost.bought, money))}
        </p>
      )}
    </section>
  );
}
