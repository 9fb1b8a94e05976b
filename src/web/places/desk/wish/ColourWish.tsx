/** A colour and a taste wished for: the route, the dose and the holds are found that land there, and how sure that is. */
import { useState } from 'react';
import { useSearch } from 'wouter';
import { a430FromEbc } from '../../../../core/colour/scales.ts';
import type { Kit } from '../../../../core/pan/kit.ts';
import { type PlanRequest, type Route, requestRanges } from '../../../../core/planning/request.ts';
import { Choice } from '../../../parts/Choice.tsx';
import { Field } from '../../../parts/Field.tsx';
import type { Wished } from '../field/FieldPlace.tsx';
import { find } from '../planner.ts';
import type { Found } from '../planner.worker.ts';
import { type ColourScale, colourScales, readColour, written } from './colourScales.ts';
import { saysOf } from './foundWords.ts';
import { Swatches } from './Swatches.tsx';
import { indexOf, type TasteWish, TasteWishes } from './TasteWishes.tsx';
import { wishIn } from './wishIn.ts';
import './wish.css';

interface ColourWishProps {
  readonly request: PlanRequest;
  readonly kit: Kit;
  readonly onFound: (request: PlanRequest) => void;
  /** The colour in hand, for the field to draw. */
  readonly onWish: (wished: Wished | undefined) => void;
}

const scales = (Object.keys(colourScales) as ColourScale[]).map((scale) => [scale, scale] as const);
const anyRoute: readonly Route[] = ['pale', 'bright', 'deep'];

export function ColourWish({ request, kit, onFound, onWish }: ColourWishProps) {
  // A glass may have sent one here.
  const [sent] = useState(wishIn(useSearch()));
  const [scale, setScale] = useState<ColourScale>('EBC');
  const [text, setText] = useState(sent.ebc === undefined ? '' : String(sent.ebc));
  // Holds for the colour that was sent with it alone.
  const [band, setBand] = useState(sent.bandEbc);
  const [taste, setTaste] = useState<TasteWish>({ fruit: 'any', roast: 'any' });
  const [by, setBy] = useState<'chosen' | 'any'>('chosen');
  const [found, setFound] = useState<Found | 'looking'>();
  const { a430, trouble } = readColour(text, scale);

  const wish = (typed: string, on: ColourScale) => {
    setText(typed);
    setBand(undefined);
    setFound(undefined);
    const { a430: wished } = readColour(typed, on);
    onWish(wished === undefined ? undefined : { a430: wished, name: `${typed.trim()} ${on}` });
  };
  async function look(wanted: number) {
    setFound('looking');
    const [least, most] = requestRanges.massKg;
    const massKg = Math.min(most, Math.max(least, sent.massKg ?? request.massKg));
    const answer = await find({
      a430: wanted,
      band: band && [a430FromEbc(band[0]), a430FromEbc(band[1])],
      taste: indexOf(taste),
      request: { ...request, massKg },
      routes: by === 'any' ? anyRoute : [request.route],
      kit,
    });
    setFound(answer);
    if (answer.kind === 'found') onFound(answer.request);
  }

  return (
    <form
      className="sheet colour-wish"
      aria-label="Colour wished for"
      onSubmit={(event) => {
        event.preventDefault();
        if (a430 !== undefined) void look(a430);
      }}
    >
      <h2>Wish</h2>
      <div className="wish-colour">
        <Field
          name="colour-wish"
          label={`Land at, ${scale} of a 10 % solution`}
          text={text}
          onText={(typed) => wish(typed, scale)}
          hint={band ? `the beer may need ${band[0]} to ${band[1]} EBC` : 'dose and holds follow from it'}
          trouble={trouble}
          keyboard="decimal"
        />
        <Choice
          label="Counted in"
          value={scale}
          options={scales}
          onChoose={(next) => {
            setScale(next);
            if (a430 === undefined) return;
            wish(written(a430, next), next);
            setBand(band);
          }}
        />
      </div>
      <Swatches scale={scale} a430={a430} onPick={(picked) => wish(written(picked, scale), scale)} />
      <details>
        <summary>A taste, or another route</summary>
        <TasteWishes taste={taste} onTaste={setTaste} by={by} onBy={setBy} route={request.route} />
      </details>
      <button type="submit" disabled={a430 === undefined || found === 'looking'}>
        {found === 'looking' ? 'Looking' : 'Find the plan'}
      </button>
      <p className="small" role="status">
        {found !== undefined && found !== 'looking' && saysOf(found)}
      </p>
    </form>
  );
}

/** The wish that an address sends, before anything is typed. */
export function sentWish(query: string): Wished | undefined {
  const { ebc } = wishIn(query);
  return ebc === undefined ? undefined : { a430: a430FromEbc(ebc), name: `${ebc} EBC` };
}
