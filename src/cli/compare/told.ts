/** A cook out of a file, as it is laid beside another. */
import { type Fact, factsOf } from '../../core/book/differences.ts';
import { followedBy } from '../../core/book/following.ts';
import { type Landed, landedOf } from '../../core/book/landed.ts';
import { type CookState, foldCook } from '../../core/log/fold.ts';
import { cookIn } from '../cook/cookIn.ts';
import { Stop } from '../stop.ts';

export interface ToldCook {
  readonly file: string;
  readonly name: string;
  readonly state: CookState;
  readonly landed: Landed | null;
  readonly facts: readonly Fact[];
}

export function told(file: string, field: string): ToldCook {
  const state = foldCook(cookIn(file).events);
  const followed = followedBy(state);
  if (!followed) {
    throw new Stop({
      kind: 'misused',
      field,
      value: file,
      message: `${file}: the log does not say how the cook began`,
    });
  }
  const { request } = state.begun?.body ?? { request: {} };
  const name = 'name' in request ? String(request.name) : file;
  const landed = landedOf(followed) ?? null;
  return { file, name, state, landed, facts: factsOf(state, landed) };
}
