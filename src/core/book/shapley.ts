/**
 * Shares of a difference by Shapley's values: each factor gets the mean of what it adds over all orders in which the factors can be
 * exchanged one after the other. The shares add up to the whole difference. Shapley 1953, Contributions to the Theory of Games II:307.
 */

/**
 * @param count factors, so few that all of their 2^count combinations are known
 * @param worth of a combination: bit i is set when factor i is exchanged
 */
export function shapleyValues(count: number, worth: (combination: number) => number): number[] {
  // By the size of a combination without the factor: how many of all orders put just these before it.
  const weights = Array.from({ length: count }, (_, size) => 1 / (count * choose(count - 1, size)));
  return Array.from({ length: count }, (_, factor) => {
    const bit = 1 << factor;
    let value = 0;
    for (let without = 0; without < 1 << count; without++) {
      if (without & bit) continue;
      value += weights[bitsIn(without)] * (worth(without | bit) - worth(without));
    }
    return value;
  });
}

function choose(n: number, k: number): number {
  let ways = 1;
  for (let i = 1; i <= k; i++) ways = (ways * (n - k + i)) / i;
  return ways;
}

function bitsIn(combination: number): number {
  let bits = 0;
  for (let rest = combination; rest > 0; rest >>= 1) bits += rest & 1;
  return bits;
}
