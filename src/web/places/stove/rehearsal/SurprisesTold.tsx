/** The surprises that there were, once all is over. */
import type { RevealedSurprise } from '../../../../core/advice/reveal.ts';
import { noSurprise, surpriseWords } from '../../../../core/advice/surpriseWords.ts';
import { minutesAndSeconds } from '../alarms/alarmWords.ts';

export function SurprisesTold({ surprises }: { readonly surprises: readonly RevealedSurprise[] }) {
  return (
    <section aria-labelledby="surprises">
      <h3 id="surprises">Surprises</h3>
      {surprises.length === 0 && <p>{noSurprise}</p>}
      {surprises.map((surprise) => (
        <p key={surprise.beganS}>{surpriseWords(surprise, minutesAndSeconds)}</p>
      ))}
    </section>
  );
}
