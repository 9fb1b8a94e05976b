/** How much of a taste is wished for, and whether the route may change for it. */
import type { TasteAim } from '../../../../core/planning/aim.ts';
import type { Route } from '../../../../core/planning/request.ts';
import { Choice } from '../../../parts/Choice.tsx';

/** What a wish in words stands for on the taste's scale from 0 to 10. */
const wishes = { any: undefined, little: 1.5, some: 3.5, much: 6.5 } as const;
type Much = keyof typeof wishes;
export type TasteWish = Readonly<Record<'fruit' | 'roast', Much>>;

export function indexOf({ fruit, roast }: TasteWish): TasteAim {
  return { fruit: wishes[fruit], roast: wishes[roast] };
}

const options = [
  ['any', 'as it comes'],
  ['little', 'little'],
  ['some', 'some'],
  ['much', 'much'],
] as const satisfies readonly (readonly [Much, string])[];

interface TasteWishesProps {
  readonly taste: TasteWish;
  readonly onTaste: (taste: TasteWish) => void;
  readonly by: 'chosen' | 'any';
  readonly onBy: (by: 'chosen' | 'any') => void;
  readonly route: Route;
}

export function TasteWishes({ taste, onTaste, by, onBy, route }: TasteWishesProps) {
  const ways = [
    ['chosen', `the ${route} route`],
    ['any', 'whichever suits'],
  ] as const;
  return (
    <div className="pairs">
      <Choice label="Fruit" value={taste.fruit} options={options} onChoose={(fruit) => onTaste({ ...taste, fruit })} />
      <Choice label="Roast" value={taste.roast} options={options} onChoose={(roast) => onTaste({ ...taste, roast })} />
      <Choice wide label="By" value={by} options={ways} onChoose={onBy} />
    </div>
  );
}
