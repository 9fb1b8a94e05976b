/** On a cook's page: how its beers were liked, and whether that tells it from other cooks. */
import { chanceText, countsText, likingText, standingWords } from './likedWords.ts';
import { useLiked } from './useLiked.ts';

export function LikedHere({ cookId }: { readonly cookId: string }) {
  const { cooks, of } = useLiked();
  const cook = of(cookId);
  if (!cook) return null;
  return (
    <p className="liked-here">
      Its beers are likely to be liked <strong>{likingText(cook)}</strong> by {countsText(cook)};{' '}
      {standingWords[cook.standing]}
      {cooks.length > 1 && `: ${chanceText(cook.best)} that of ${cooks.length} cooks it is the best`}.
    </p>
  );
}
