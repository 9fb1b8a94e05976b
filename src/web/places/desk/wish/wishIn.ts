/** What the Desk's address may ask for: `?colour=45&mass=400`, in EBC of a 10 % solution and g, as a glass sends it. */
export interface WishSent {
  readonly ebc: number | undefined;
  readonly massKg: number | undefined;
}

export function wishIn(query: string): WishSent {
  const asked = new URLSearchParams(query);
  const positive = (name: string): number | undefined => {
    const value = Number(asked.get(name) ?? Number.NaN);
    return Number.isFinite(value) && value > 0 ? value : undefined;
  };
  const grams = positive('mass');
  return { ebc: positive('colour'), massKg: grams === undefined ? undefined : grams / 1000 };
}
