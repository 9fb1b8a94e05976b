/** The surprises that there were, once all is over. */
import type { RevealedSurprise } from '../../../../core/advice/reveal.ts';
import { noSurprise, surpriseWords } from '../../../../core/advice/surpriseWords.ts';
import { minutesAndSeconds } from '../alarms/alarmWords.ts';

interface ToldProps {
  readonly surprises: readonly RevealedSurprise[];
  /** As deep as they stand on their page. */
  readonly heading?: 'h2' | 'h3';
}

export function SurprisesTold({ surprises, heading: Heading = 'h3' }: ToldProps) {
  return (
    <section aria-labelledby="surprises">
      <Heading id="surprises">Surprises</Heading>
      {surprises.length === 0 && <p>{noSurprise}</p>}
      {surprises.map((surprise) => (
        <p key={surprise.beganS}>{surpriseWords(surprise, minutesAndSeconds)}</p>
      ))}
    </section>
  );
}
