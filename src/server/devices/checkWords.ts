/** Four words from a token's hash, shown on both screens: whoever pairs sees that it is their own device that was let in. */

/** 64 words, so that each stands for six bits. */
const words = (
  'apple apron barley basil basket berry bottle bowl bread broom bucket butter candle carrot cellar cherry ' +
  'clove copper cork crumb cup damson ember fennel flask flour fork garden ginger grape hazel honey ' +
  'jar jug kettle ladle lantern leaf lemon linen maple mint mortar mug nutmeg oat onion orchard ' +
  'oven pear pepper plum quince rye saffron sage salt scale sieve spoon thyme walnut wheat yeast'
).split(' ');

/** @param hash hexadecimal */
export function checkWords(hash: string): string {
  const picked = [0, 2, 4, 6].map((at) => words[Number.parseInt(hash.slice(at, at + 2), 16) % words.length]);
  return picked.join(' ');
}
