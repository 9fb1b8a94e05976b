/** Ways to what was wished, to take one of them; or the sugar to plan instead; and which sugars won't do, with why. */
import { Link } from 'wouter';
import { numbersOf } from '../../../core/beer/given.ts';
import type { KeptDose } from '../../../core/beer/keptGlass.ts';
import type { Way } from '../../../core/beer/reach.ts';
import type { SugarAim } from '../../../core/beer/sugarAim.ts';
import type { Range } from '../../../core/twin/range.ts';
import type { Answer, Asked } from './Reach.tsx';
import { bracketed, colourFactor, digits, massShown, reachShown, type Show } from './shown.ts';
import type { GlassHand } from './useGlass.ts';

interface AnswerProps {
  readonly answer: Answer;
  readonly asked: Asked;
  readonly hand: GlassHand;
}

export function ReachAnswer({ answer, asked, hand }: AnswerProps) {
  if (answer.kind === 'refused') return <p className="glass-refused">That can't be reckoned: {answer.why}</p>;
  return (
    <div className="answer">
      {answer.kind === 'ways' && (
        <ul>
          {answer.ways.map((way) => (
            <WayView key={way.uses.map(({ candidate }) => candidate).join()} way={way} asked={asked} hand={hand} />
          ))}
        </ul>
      )}
      {answer.kind === 'aim' && <AimView aim={answer.aim} hand={hand} />}
      {answer.kind === 'never' && <p>No sugar brings it there: {answer.why}.</p>}
      {answer.unfit.length > 0 && (
        <details>
          <summary>Why not the others ({answer.unfit.length})</summary>
          <ul className="unfit">
            {answer.unfit.map(({ candidate, why }) => (
              <li key={candidate}>
                {asked.candidates[candidate]?.name}: {why}
              </li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}

function WayView({ way, asked, hand }: { readonly way: Way } & Omit<AnswerProps, 'answer'>) {
  const { units, draft, setDoses } = hand;
  const mass = massShown(units);
  const beer = numbersOf(way.glass);
  const name = (candidate: number) => asked.candidates[candidate]?.name ?? '';
  const names = way.uses.map(({ candidate }) => name(candidate)).join(' and ');

  function take() {
    const taken = way.uses.flatMap(({ candidate, massKg }): KeptDose[] => {
      const sugar = asked.candidates[candidate]?.sugar;
      return sugar ? [{ sugar, massKg, added: asked.added }] : [];
    });
    setDoses([...(asked.besides ? draft.sheet.good.doses : []), ...taken]);
  }

  return (
    <li className="way">
      <p>
        {way.uses.map(({ candidate, massKg, massRangeKg }, at) => (
          <span key={candidate}>
            {at > 0 && ' with '}
            <strong>{mass(massKg)}</strong> of {name(candidate)}
            {massRangeKg && (
              <span className="quiet">
                {' '}
                (8 in 10: {mass(massRangeKg.low)} to {mass(massRangeKg.high)})
              </span>
            )}
          </span>
        ))}
      </p>
      <p className="small quiet">
        gives {told(beer.a430PerCm, digits(1, colourFactor(units)))} {units.colour}, original gravity{' '}
        {told(beer.originalGravity, digits(4))}, {told(beer.extractShare, digits(1, 100))} % of the extract from sugar
      </p>
      <button type="button" onClick={take}>
        Put in<span className="unseen"> {names}</span>
      </button>
    </li>
  );
}

function told(range: Range, show: Show): string {
  return `${show(range.mid)}${bracketed(reachShown(range, show))}`;
}

function AimView({ aim, hand }: { readonly aim: SugarAim; readonly hand: GlassHand }) {
  const { massKg, massRangeKg, ebcRange, darkerThanKitchen } = aim;
  const mass = massShown(hand.units);
  return (
    <>
      <p>
        No sugar at hand does it. It takes <strong>{mass(massKg)}</strong> of a hard sugar{' '}
        <span className="quiet">
          (8 in 10: {mass(massRangeKg.low)} to {mass(massRangeKg.high)})
        </span>
        {ebcRange && (
          <>
            {' '}
            of <strong>{ebcText(ebcRange.mid)} EBC</strong> (10 % w/w){' '}
            <span className="quiet">
              (8 in 10: {ebcText(ebcRange.low)} to {ebcText(ebcRange.high)})
            </span>
          </>
        )}
        .
      </p>
      {darkerThanKitchen && (
        <p className="glass-caution">
          That is darker than what a kitchen makes: take more sugar, or be content with less colour.
        </p>
      )}
      <Link className="button" href={`/?${queryOf(aim)}`}>
        Plan it at the Desk
      </Link>
    </>
  );
}

const ebcText = (ebc: number): string => String(Number(ebc.toPrecision(3)));

/** As the Desk reads it: the colour with what the beer may need, and the mass. */
function queryOf({ massKg, ebcRange }: SugarAim): URLSearchParams {
  return new URLSearchParams({
    ...(ebcRange && { colour: ebcText(ebcRange.mid), from: ebcText(ebcRange.low), to: ebcText(ebcRange.high) }),
    mass: (massKg * 1000).toFixed(0),
  });
}
