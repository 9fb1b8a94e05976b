/** Two greys that look like rows of black and white tell the screen's curve; the swatches are drawn for it from then on. On this device alone. */
import { useState } from 'react';
import {
  gammaOfMatch,
  levelRange,
  type Matched,
  matched,
  matchedShares,
  matchesAgree,
  type ScreenMatches,
  standardMatches,
} from '../../../../../core/colour/screen.ts';
import { dayText } from '../../../../parts/dayText.ts';
import { Stepper } from '../../../../parts/Stepper.tsx';
import { RowsPattern } from './RowsPattern.tsx';
import './screen.css';
import { forgetScreen, type TaughtScreen, teachScreen, useTaughtScreen } from './taughtScreen.ts';

const words: Readonly<Record<Matched, { readonly rows: string; readonly grey: string }>> = {
  half: { rows: 'Every second row white', grey: 'Grey amid every second row' },
  quarter: { rows: 'Every fourth row white', grey: 'Grey amid every fourth row' },
};
const preparations = [
  'Turn off night light, warm colours, reading mode and anything that follows the light of the room. Let the screen warm up for a quarter of an hour.',
  'Hold white paper beside it and set the brightness until both are about equally bright. Leave it so while you measure. No lamp or window may mirror in it.',
  'Do not enlarge the page with two fingers. Look straight on from arm’s length or further, until the rows melt into one grey. Half-closed eyes help.',
  'Change each grey until its block can no longer be told from the rows around it.',
];
/** Plainly too dark: a start where most screens lie would be left there unlooked at. */
const start: ScreenMatches = { half: levelRange(1 / 2)[0], quarter: levelRange(1 / 4)[0] };

export function TeachScreen() {
  const screen = useTaughtScreen();
  const [matches, setMatches] = useState(screen?.matches ?? start);
  const [touched, setTouched] = useState<readonly Matched[]>([]);
  const isMatched = matched.every((which) => touched.includes(which));
  const agree = matchesAgree(matches);

  return (
    <details className="screen-teach">
      <summary>Teach the screen</summary>
      <p className="small">
        Screens show middle tones darker or paler than they should. Rows of black and white show how much: the grey that
        looks the same tells it, and the swatches are then drawn for this screen. It is kept on this device alone.
      </p>
      <ol className="small steps">
        {preparations.map((each) => (
          <li key={each}>{each}</li>
        ))}
      </ol>
      <div className="screen-matches">
        {matched.map((which) => (
          <div key={which}>
            <RowsPattern
              label={`${words[which].rows}, with the grey in the middle`}
              every={1 / matchedShares[which]}
              grey={matches[which]}
            />
            <Stepper
              label={words[which].grey}
              value={matches[which]}
              steps={[1, 8]}
              range={levelRange(matchedShares[which])}
              onChange={(level) => {
                setMatches({ ...matches, [which]: Math.round(level) });
                setTouched([...touched, which]);
              }}
            />
          </div>
        ))}
      </div>
      <p className="small" role="status">
        {isMatched && (agree ? gammaText(matches) : apartText)}
      </p>
      <button
        type="button"
        disabled={!isMatched || !agree}
        onClick={() => {
          teachScreen(new Date().toISOString(), matches);
          setTouched([]);
        }}
      >
        Both look alike: teach it
      </button>
      <Taught screen={screen} />
    </details>
  );
}

function Taught({ screen }: { readonly screen: TaughtScreen | undefined }) {
  if (!screen) return <p className="small quiet">It was taught nothing yet.</p>;
  return (
    <ul className="note-list">
      <li>
        <span>
          <strong>This screen</strong>{' '}
          <span className="small quiet">
            {dayText(screen.at)}; {gammaText(screen.matches)}
          </span>
        </span>
        <button type="button" className="plain" onClick={forgetScreen}>
          Take away<span className="unseen"> what this screen was taught</span>
        </button>
      </li>
    </ul>
  );
}

const apartText =
  'These two contradict each other, so nothing is taught. Look again at both: from further away, straight on, with nothing mirrored in the screen.';

function gammaText(matches: ScreenMatches): string {
  return `gamma ${gammas(matches)}, where the standard has ${gammas(standardMatches)}`;
}

function gammas(matches: ScreenMatches): string {
  const [half, quarter] = matched.map((which) => gammaOfMatch(matches[which], matchedShares[which]).toFixed(2));
  return `${half} at half the light and ${quarter} at a quarter`;
}
