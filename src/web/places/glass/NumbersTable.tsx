/** Every number of the beer, without the sugars and with them; the range below holds it in 8 beers of 10. */
import type { BeerNumbers, Given } from '../../../core/beer/given.ts';
import type { Range } from '../../../core/twin/range.ts';
import { WideTable } from '../../parts/WideTable.tsx';
import type { MineralsTold } from './mineralsTold.ts';
import { colourFactor, digits, type GlassUnits, reachShown, type Show, volumeShown } from './shown.ts';

type Row = readonly [label: string, name: keyof BeerNumbers, show: Show];

/** Thermochemical. */
const kilojoulesPerKilocalorie = 4.184;

function rowsIn(units: GlassUnits): readonly Row[] {
  return [
    ['Original gravity', 'originalGravity', digits(4)],
    ['Original extract, °P', 'originalPlato', digits(2)],
    ['Gravity at pitching', 'pitchingGravity', digits(4)],
    ['Final gravity', 'finalGravity', digits(4)],
    ['Alcohol, % by volume', 'abv', digits(2)],
    ['Alcohol by regression', 'abvByRegression', digits(2)],
    ['Apparent attenuation, %', 'apparentAttenuation', digits(1, 100)],
    ['Real attenuation, %', 'realAttenuation', digits(1, 100)],
    [`Colour, ${units.colour}`, 'a430PerCm', digits(1, colourFactor(units))],
    ['Extract from sugar, %', 'extractShare', digits(1, 100)],
    ['Sugars ferment to, %', 'fermentability', digits(0, 100)],
    ['Gained by inversion, °P', 'inversionGainPlato', digits(2)],
    ['Volume', 'volumeL', volumeShown(units)],
    ['Sodium added, mg/L', 'sodiumMgPerL', digits(0)],
    ['Calcium added, mg/L', 'calciumMgPerL', digits(0)],
    ['Energy, kcal/100 mL', 'kcalPer100mL', digits(0)],
    ['Energy, kJ/100 mL', 'kcalPer100mL', digits(0, kilojoulesPerKilocalorie)],
  ];
}

/** Without sugars there is nothing of it. */
const ofSugarsAlone: readonly (keyof BeerNumbers)[] = [
  'extractShare',
  'fermentability',
  'inversionGainPlato',
  'sodiumMgPerL',
  'calciumMgPerL',
];

interface NumbersProps {
  readonly given: Given;
  readonly units: GlassUnits;
  readonly minerals: MineralsTold;
}

export function NumbersTable({ given, units, minerals }: NumbersProps) {
  const { beer, without } = given;
  return (
    <WideTable label="The beer in numbers, as a table">
      <table className="glass-numbers">
        <caption>
          The beer <span className="quiet">Below a number: where 8 beers of 10 end.</span>
        </caption>
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">What</span>
            </th>
            <th scope="col">without</th>
            <th scope="col">with its sugars</th>
          </tr>
        </thead>
        <tbody>
          {rowsIn(units).map(([label, name, show]) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              <td>{!ofSugarsAlone.includes(name) && <Figure range={without[name]} show={show} />}</td>
              <td>
                {isMineral(name) && minerals === 'none' ? 'not known' : <Figure range={beer[name]} show={show} />}
                {isMineral(name) && minerals === 'some' && <span className="within">of those known</span>}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </WideTable>
  );
}

function isMineral(name: keyof BeerNumbers): boolean {
  return name === 'sodiumMgPerL' || name === 'calciumMgPerL';
}

function Figure({ range, show }: { readonly range: Range; readonly show: Show }) {
  return (
    <>
      <strong>{show(range.mid)}</strong>
      <span className="within">{reachShown(range, show)}</span>
    </>
  );
}
