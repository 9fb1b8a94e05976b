/** The end of a rehearsal as a JSON document. */
import type { Revealed } from '../../core/advice/reveal.ts';
import { surpriseKinds } from '../../core/advice/surpriseKinds.ts';
import type { Range } from '../../core/twin/range.ts';
import type { Ended } from './ended.ts';
import { shownAs } from './revealed.ts';

export function rehearsalDocument(ended: Ended) {
  const { plan, kit, seed, members, ending, rehearsal, inBand, spoonfuls, turns, reveal } = ended;
  return {
    format: 'umberpan-rehearsal-1',
    mode: 'rehearsal',
    request: plan.request,
    kit,
    seed,
    members,
    ending,
    takes_s: rehearsal.timeS,
    'in_band_%': inBand === undefined ? null : Number((100 * inBand).toFixed(1)),
    spoonfuls,
    turns,
    deeds: rehearsal.deeds.map(({ timeS, deed }) => ({ t: timeS, ...deed })),
    pan: documentOf(reveal.pan),
    kitchen: documentOf(reveal.kitchen),
    surprises:
      reveal.surprises?.map(({ name, beganS, saidS = null, rightS = null }) => ({
        name,
        alarm: surpriseKinds[name].alarm,
        t: beganS,
        said_t: saidS,
        right_t: rightS,
      })) ?? null,
  };
}

function documentOf(rows: readonly (Revealed<keyof typeof shownAs> & { readonly before?: Range })[]) {
  return Object.fromEntries(
    rows.map(({ name, hidden, believed, inside, before }) => {
      const { key, scale } = shownAs[name];
      const scaled = ({ low, mid, high }: Range) => ({ low: low * scale, mid: mid * scale, high: high * scale });
      const row = { hidden: hidden * scale, believed: scaled(believed), inside };
      return [key, before ? { ...row, before: scaled(before) } : row];
    }),
  );
}
