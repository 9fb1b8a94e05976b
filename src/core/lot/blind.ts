/** An order in which several lots are tasted without knowing which is which: three-digit codes and a shuffle, from a seed. */
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

export interface Blind {
  readonly id: string;
  /** Three digits that mean nothing. */
  readonly code: string;
}

/**
 * Codes and the order to taste in.
 *
 * @param ids lots, each once
 * @param seed a whole number; the same seed gives the same order
 * Source: random three-digit codes and a random order are the rule of sensory work (ISO 6658, from memory); shuffle by Fisher and Yates.
 */
export function blindOrder(ids: readonly string[], seed: number): readonly Blind[] {
  const generator = xoroshiro128plus(seed);
  const upTo = (most: number): number => uniformInt(generator, 0, most);
  const codes = new Set<number>();
  while (codes.size < ids.length) codes.add(100 + upTo(899));
  const order = [...ids];
  for (let i = order.length - 1; i > 0; i--) {
    const j = upTo(i);
    [order[i], order[j]] = [order[j] as string, order[i] as string];
  }
  const drawn = [...codes];
  return order.map((id, at) => ({ id, code: String(drawn[at]) }));
}
