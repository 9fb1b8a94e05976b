/** In which order the lines of a field are worked out, so that a coarse picture of all of it comes first. */

/**
 * Numbers from 0 to `count - 1`: both ends, then ever halving what lies between.
 *
 * @param count 1 or more
 */
export function coarseToFine(count: number): readonly number[] {
  const order: number[] = [];
  const taken = new Set<number>();
  const take = (at: number) => {
    if (at < count && !taken.has(at)) {
      taken.add(at);
      order.push(at);
    }
  };
  take(0);
  take(count - 1);
  for (let stride = 2 ** Math.ceil(Math.log2(count)); stride >= 1; stride /= 2) {
    for (let at = 0; at < count; at += stride) take(at);
  }
  return order;
}
