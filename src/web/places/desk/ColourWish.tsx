/** A colour wished for: the dose and the holds of the chosen route are found that land there, and how sure that is. */
import { useState } from 'react';
import { useSearch } from 'wouter';
import { a430FromEbc } from '../../../core/colour/scales.ts';
import type { Kit } from '../../../core/pan/kit.ts';
import { type PlanRequest, requestRanges } from '../../../core/planning/request.ts';
import { Field } from '../../parts/Field.tsx';
import { ebcOf, span } from '../../parts/figures.ts';
import { find } from './planner.ts';
import type { Found } from './planner.worker.ts';
import { wishIn } from './wishIn.ts';

interface ColourWishProps {
  readonly request: PlanRequest;
  readonly kit: Kit;
  readonly onFound: (request: PlanRequest) => void;
}

/** What a kitchen can make lies well within, EBC of a 10 % w/w solution. */
const range = [0.5, 1300] as const;

export function ColourWish({ request, kit, onFound }: ColourWishProps) {
  // A glass may have sent one here.
  const [sent] = useState(wishIn(useSearch()));
  const [text, setText] = useState(sent.ebc === undefined ? '' : String(sent.ebc));
  const [found, setFound] = useState<Found | 'looking'>();
  const ebc = Number(text.trim().replace(',', '.'));
  const readable = text.trim() !== '' && ebc >= range[0] && ebc <= range[1];
  const trouble =
    text.trim() === '' || readable
      ? undefined
      : `“${text.trim()}” can’t be aimed at. Allowed: ${range[0]} to ${range[1]} EBC`;

  async function look() {
    setFound('looking');
    const [least, most] = requestRanges.massKg;
    const massKg = Math.min(most, Math.max(least, sent.massKg ?? request.massKg));
    const answer = await find({ a430: a430FromEbc(ebc), request: { ...request, massKg }, kit });
    setFound(answer);
    if (answer.kind === 'found') onFound(answer.request);
  }

  return (
    <form
      className="sheet colour-wish"
      aria-label="Colour wished for"
      onSubmit={(event) => {
        event.preventDefault();
        if (readable) void look();
      }}
    >
      <Field
        name="colour-wish"
        label="Land at, EBC of a 10 % solution"
        text={text}
        onText={setText}
        hint="the dose and the holds of the route below follow from it"
        trouble={trouble}
        keyboard="decimal"
        wide
      />
      <button type="submit" disabled={!readable || found === 'looking'}>
        {found === 'looking' ? 'Looking' : 'Find the plan'}
      </button>
      <p className="small" role="status">
        {found !== undefined && found !== 'looking' && saysOf(found)}
      </p>
    </form>
  );
}

function saysOf(found: Found): string {
  if (found.kind === 'refused') return `No plan: ${found.refusals.map(({ message }) => message).join('; ')}.`;
  if (found.kind === 'failed') return `This could not be computed: ${found.message}`;
  const { a430, likely, short } = found;
  const lands = `Planned to land at ${ebcOf(a430)} EBC; 8 in 10 cooks of it at ${span(likely, ebcOf)} EBC.`;
  return short === undefined ? lands : `${lands} No nearer by this route: ${short}.`;
}
