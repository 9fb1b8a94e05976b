/** Prices of a kit, each of which may be left out. */
import { type Kit, kitRanges, type PricedThing } from '../../../core/pan/kit.ts';
import type { Entries, Entry } from '../../parts/entry.ts';
import { plainEntry } from '../../parts/numberEntry.ts';

const things: Readonly<Record<PricedThing, string>> = {
  sugar: 'A kg of sugar',
  maltExtract: 'A kg of malt extract',
  alkali: 'A kg of alkali',
  acid: 'A kg of citric acid',
  energy: 'A kWh',
  bought: 'A kg of bought brewing sugar',
};

function priceEntry(thing: PricedThing, label: string): Entry<Kit> {
  const number = plainEntry<Kit>({
    ...{ label, range: kitRanges.price, unit: '' },
    get: ({ prices }) => prices?.[thing] ?? 0,
    set: (kit, price) => ({ ...kit, prices: { ...kit.prices, [thing]: price } }),
  });
  return {
    ...number,
    show: (kit) => (kit.prices?.[thing] === undefined ? '' : number.show(kit)),
    put(kit, text) {
      if (text.trim() !== '') return number.put(kit, text);
      const { [thing]: _, ...others } = kit.prices ?? {};
      const { prices: __, ...bare } = kit;
      return Object.keys(others).length > 0 ? { ...bare, prices: others } : bare;
    },
  };
}

export const priceEntries: Entries<Kit> = Object.fromEntries(
  (Object.keys(things) as PricedThing[]).map((thing) => [`prices.${thing}`, priceEntry(thing, things[thing])]),
);
