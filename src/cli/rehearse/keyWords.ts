/** What the keys of a rehearsal do, for the help and the first line of the screen. */
export const keyWords =
  'Enter do what is advised, i put it aside for a minute, s see to an alarm, w water, + - dial, 0 heat off, a part of the alkali, n next step, p pour, q leave';
