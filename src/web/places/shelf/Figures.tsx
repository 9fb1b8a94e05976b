/** What is known of a lot: each figure with its range, and whether it was measured or only believed. */
import type { Finding } from '../../../core/lot/known.ts';
import type { AlkaliGiven } from '../../../core/lot/lot.ts';
import type { Range } from '../../../core/twin/range.ts';
import { ebcOf, grams, percent, span, srmOf } from '../../parts/figures.ts';
import type { Shown } from './shown.ts';

export function Figures({ shown }: { readonly shown: Shown }) {
  const { lot, known } = shown;
  const { figures, solids, colour, ph, madeKg } = known;
  const believed = lot.origin === 'told' ? 'as told' : 'as believed at the pour';
  const tenths = (share: number) => percent(share, 1);
  const thousands = (value: number) => Number(value.toPrecision(2)).toLocaleString();
  return (
    <section className="figures" aria-labelledby="lot-figures">
      <h2 id="lot-figures">What is known of it</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">Figure</th>
            <th scope="col">Value</th>
            <th scope="col">From</th>
          </tr>
        </thead>
        <tbody>
          <Row
            name="Yield"
            range={madeKg}
            show={grams}
            unit="g"
            from={madeKg === lot.expected.massKg ? believed : 'weighed'}
          />
          <Row name="Water" range={figures.waterShare} show={tenths} from={fromWords(solids, believed)} />
          <Row name="Colour, EBC" range={figures.a430} show={ebcOf} from={fromWords(colour, believed)} />
          <Row name="Colour, SRM" range={figures.a430} show={srmOf} from={fromWords(colour, believed)} />
          <Row
            name="Colour, ICUMSA"
            range={figures.icumsa}
            show={thousands}
            unit="IU"
            from={fromWords(colour, believed)}
          />
          <Row name="Inverted" range={figures.inverted} show={percent} from={believed} />
          {ph && (
            <Row
              name="pH, diluted"
              range={ph.range}
              show={(value) => value.toFixed(1)}
              from={fromWords(ph, believed)}
            />
          )}
          <tr>
            <th scope="row">Alkali</th>
            <td>{alkaliWords(lot.alkali)}</td>
            <td className="quiet">{lot.origin === 'cooked' && lot.alkali ? 'as logged' : ''}</td>
          </tr>
        </tbody>
      </table>
      <p className="small quiet">Below the value: 8 in 10. EBC and SRM of a 10 % w/w solution of the dry sugar.</p>
    </section>
  );
}

interface RowProps {
  readonly name: string;
  readonly range: Range;
  readonly show: (value: number) => string;
  readonly unit?: string;
  readonly from: string;
}

function Row({ name, range, show, unit, from }: RowProps) {
  const ends = unit ? `${span(range, show)} ${unit}` : span(range, show);
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>
        <strong>{unit ? `${show(range.mid)} ${unit}` : show(range.mid)}</strong>
        <span className="small quiet"> {ends}</span>
      </td>
      <td className="quiet">{from}</td>
    </tr>
  );
}

function fromWords(finding: Finding | undefined, believed: string): string {
  if (!finding) return believed;
  const times = finding.count === 1 ? 'measured once' : `measured ${finding.count} times`;
  return finding.apart > 2 ? `${times}; the readings contradict each other` : times;
}

function alkaliWords(alkali: AlkaliGiven | null): string {
  if (!alkali) return 'not known';
  if (alkali.gramsPerKgSucrose === 0) return 'none';
  const name = alkali.substance === 'sodiumHydroxide' ? 'NaOH' : 'Ca(OH)₂';
  return `${alkali.gramsPerKgSucrose.toFixed(1)} g ${name} for each kg of sugar`;
}
