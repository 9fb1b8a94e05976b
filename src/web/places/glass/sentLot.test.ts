import { expect, it } from 'vitest';
import { freshDraft, type GlassDraft } from './draft.ts';
import { puttingIn, usualDoseKg } from './sentLot.ts';
import { newBoughtSugar, sugarOfShelf } from './sugars.ts';

const lot = (id: string) => ({ sugar: sugarOfShelf(id), massKg: usualDoseKg, added: 'kettle' }) as const;
function beer(change: Partial<GlassDraft['sheet']['good']>): GlassDraft {
  return { sheet: { good: { ...freshDraft.sheet.good, ...change }, texts: {} }, base: null };
}

it('goes alone into a beer that nobody has touched: its sugar was an example', () => {
  expect(puttingIn(freshDraft, 'a')).toEqual({ kind: 'put', into: freshDraft, doses: [lot('a')] });
});

it('goes beside the sugars of the beer in hand, once', () => {
  const bought = { sugar: newBoughtSugar, massKg: 0.3, added: 'late' } as const;
  const draft = beer({ name: 'Abbey', doses: [bought] });
  expect(puttingIn(draft, 'a')).toEqual({ kind: 'put', into: draft, doses: [bought, lot('a')] });
  expect(puttingIn(beer({ doses: [bought, lot('a')] }), 'a')).toEqual({ kind: 'there' });
});

it('goes into a new beer when the one in hand is bottled, and nowhere when there is no room', () => {
  const bottled = beer({ name: 'Abbey', bottledOn: '2030-05-09' });
  expect(puttingIn(bottled, 'a')).toMatchObject({ into: freshDraft, doses: [lot('a')] });
  const full = beer({ doses: Array.from({ length: 12 }, (_, i) => lot(`lot ${i}`)) });
  expect(puttingIn(full, 'a')).toEqual({ kind: 'full' });
});
