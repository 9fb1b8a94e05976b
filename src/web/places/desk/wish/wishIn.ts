/** What the Desk's address may ask for: `?colour=45&from=40&to=51&mass=400`, in EBC of a 10 % solution and g, as a glass sends it. */
export interface WishSent {
  readonly ebc: number | undefined;
  /** Any colour within serves, as far as is known. */
  readonly bandEbc: readonly [number, number] | undefined;
  readonly massKg: number | undefined;
}

export function wishIn(query: string): WishSent {
  const asked = new URLSearchParams(query);
  const positive = (name: string): number | undefined => {
    const value = Number(asked.get(name) ?? Number.NaN);
    return Number.isFinite(value) && value > 0 ? value : undefined;
  };
  const [ebc, from, to, grams] = ['colour', 'from', 'to', 'mass'].map(positive);
  const isBand = ebc !== undefined && from !== undefined && to !== undefined && from <= ebc && ebc <= to;
  return { ebc, bandEbc: isBand ? [from, to] : undefined, massKg: grams === undefined ? undefined : grams / 1000 };
}
