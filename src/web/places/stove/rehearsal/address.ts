/**
 * What the Stove's address may ask for: `?seed=41` rehearses on that hidden pan, so that a cook can be repeated or passed on;
 * `?speed=240` sets the clock faster than its buttons do, for trials: it then goes as fast as the machine can.
 */
export interface Wishes {
  readonly seed: number | undefined;
  readonly speed: number | undefined;
}

const mostSeed = 9999;
const mostSpeed = 1000;

function whole(text: string | null, most: number): number | undefined {
  const value = Number(text ?? 'none');
  return Number.isInteger(value) && value >= 1 && value <= most ? value : undefined;
}

export function wishesOf(query: string): Wishes {
  const asked = new URLSearchParams(query);
  return { seed: whole(asked.get('seed'), mostSeed), speed: whole(asked.get('speed'), mostSpeed) };
}

/** A hidden pan by lot. */
export function anySeed(): number {
  const [drawn = 0] = crypto.getRandomValues(new Uint32Array(1));
  return 1 + (drawn % mostSeed);
}
