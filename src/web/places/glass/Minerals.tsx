/** Sodium and calcium that the sugars bring, and what is in the beer in all, against what brewers advise. */
import type { Given } from '../../../core/beer/given.ts';
import type { Glass } from '../../../core/beer/glass.ts';
import { type Metal, mineralGuidance } from '../../../core/beer/mineralGuidance.ts';
import type { Range } from '../../../core/twin/range.ts';
import { mineralsTold } from './mineralsTold.ts';
import { bracketed, digits, reachShown } from './shown.ts';

interface MineralsProps {
  readonly glass: Glass;
  readonly given: Given;
}

export function Minerals({ glass: { rest, doses }, given: { beer } }: MineralsProps) {
  const told = mineralsTold({ doses });
  return (
    <section className="beside" aria-labelledby="glass-minerals">
      <h2 id="glass-minerals">Sodium and calcium</h2>
      {told === 'none' ? (
        <p className="quiet small">Say what alkali each sugar was browned with to have them.</p>
      ) : (
        <p>
          <Told metal="sodium" added={beer.sodiumMgPerL} before={rest.sodiumMgPerL} />
          <br />
          <Told metal="calcium" added={beer.calciumMgPerL} before={rest.calciumMgPerL} />
        </p>
      )}
      {told === 'some' && <p className="quiet small">Without the sugars whose alkali is not known.</p>}
    </section>
  );
}

function Told({ metal, added, before }: { readonly metal: Metal; readonly added: Range; readonly before: number }) {
  const whole = digits(0);
  const advised = mineralGuidance.find((each) => each.metal === metal && each.of === 'total')?.fromMgPerL;
  return (
    <>
      {metal === 'sodium' ? 'Sodium' : 'Calcium'} <strong>+{whole(added.mid)}</strong>
      {bracketed(reachShown(added, whole))}, in all {whole(before + added.mid)} mg/L; advised is below {advised}.
    </>
  );
}
