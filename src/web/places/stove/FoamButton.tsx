/** Foam is seen by nobody but the cook: to be told at any time, whatever else is on the screen. */
import { useActs } from './acts.ts';
import { useGuard } from './useGuard.ts';

export function FoamButton({ begun }: { readonly begun: boolean }) {
  const acts = useActs();
  const guarded = useGuard('');
  return (
    <button
      type="button"
      className="foam"
      disabled={!begun}
      onClick={guarded(() => acts.say('foam', { rising: true }))}
    >
      Foam!
    </button>
  );
}
