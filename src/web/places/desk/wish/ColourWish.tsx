/** A colour and a taste wished for: the route, the dose and the holds are found that land there, and how sure that is. */
import { useState } from 'react';
import { useSearch } from 'wouter';
import { a430FromEbc } from '../../../../core/colour/scales.ts';
import type { Kit } from '../../../../core/pan/kit.ts';
import { bandAbout } from '../../../../core/planning/aim.ts';
import { type PlanRequest, type Route, requestRanges } from '../../../../core/planning/request.ts';
import type { Wished } from '../field/FieldPlace.tsx';
import { find } from '../planner.ts';
import type { Found } from '../planner.worker.ts';
import { readColour, readNear } from './colourScales.ts';
import { saysOf } from './foundWords.ts';
import { indexOf, type TasteWish, TasteWishes } from './TasteWishes.tsx';
import { type ColourTyped, WishedColour } from './WishedColour.tsx';
import { wishIn } from './wishIn.ts';
import './wish.css';

interface ColourWishProps {
  readonly request: PlanRequest;
  readonly kit: Kit;
  readonly onFound: (request: PlanRequest) => void;
  /** The colour in hand, for the field to draw. */
  readonly onWish: (wished: Wished | undefined) => void;
}

const anyRoute: readonly Route[] = ['pale', 'bright', 'deep'];

export function ColourWish({ request, kit, onFound, onWish }: ColourWishProps) {
  // A glass may have sent one here.
  const [sent] = useState(wishIn(useSearch()));
  const [typed, setTyped] = useState<ColourTyped>({
    scale: 'EBC',
    text: sent.ebc === undefined ? '' : String(sent.ebc),
    near: '10 %',
    beerEbc: sent.bandEbc,
  });
  const [taste, setTaste] = useState<TasteWish>({ fruit: 'any', roast: 'any' });
  const [by, setBy] = useState<'chosen' | 'any'>('chosen');
  const [found, setFound] = useState<Found | 'looking'>();
  const { a430 } = readColour(typed.text, typed.scale);
  const band = bandOf(typed, a430);

  const type = (next: ColourTyped) => {
    setTyped(next);
    setFound(undefined);
    const wished = readColour(next.text, next.scale).a430;
    onWish(wished === undefined ? undefined : { a430: wished, name: `${next.text.trim()} ${next.scale}` });
  };
  async function look(wanted: number, near: readonly [number, number]) {
    setFound('looking');
    const [least, most] = requestRanges.massKg;
    const massKg = Math.min(most, Math.max(least, sent.massKg ?? request.massKg));
    const answer = await find({
      a430: wanted,
      band: near,
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
        if (a430 !== undefined && band) void look(a430, band);
      }}
    >
      <h2>Wish</h2>
      <WishedColour typed={typed} onTyped={type} />
      <details>
        <summary>A taste, or another route</summary>
        <TasteWishes taste={taste} onTaste={setTaste} by={by} onBy={setBy} route={request.route} />
      </details>
      <button type="submit" disabled={a430 === undefined || !band || found === 'looking'}>
        {found === 'looking' ? 'Looking' : 'Find the plan'}
      </button>
      <p className="small" role="status">
        {found !== undefined && found !== 'looking' && saysOf(found, typed.beerEbc !== undefined)}
      </p>
    </form>
  );
}

/** A430 that would serve; nothing while it can't be read. */
function bandOf(
  { near, scale, beerEbc }: ColourTyped,
  a430: number | undefined,
): readonly [number, number] | undefined {
  if (beerEbc) return [a430FromEbc(beerEbc[0]), a430FromEbc(beerEbc[1])];
  const { within } = readNear(near, scale);
  return a430 !== undefined && within ? bandAbout(a430, within) : undefined;
}

/** The wish that an address sends, before anything is typed. */
export function sentWish(query: string): Wished | undefined {
  const { ebc } = wishIn(query);
  return ebc === undefined ? undefined : { a430: a430FromEbc(ebc), name: `${ebc} EBC` };
}
