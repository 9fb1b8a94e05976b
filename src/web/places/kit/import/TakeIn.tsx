/** Takes an imported cook in: all of its events in one request, of which the server keeps all or none. */
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import { eventsOf } from '../../../../core/learn/imported/events.ts';
import type { Preview } from '../../../../core/learn/imported/preview.ts';
import type { Begun } from '../../../../core/log/bodies.ts';
import { answerTo } from '../../../records/answer.ts';
import { failureOf } from '../../../records/failureOf.ts';
import { newId } from '../../../records/newId.ts';

interface TakeInProps {
  readonly preview: Preview;
  readonly begun: Begun;
  readonly startMs: number;
  readonly kitId: string;
  readonly away: boolean;
  readonly onTaken: () => void;
}

export function TakeIn({ preview, begun, startMs, kitId, away, onTaken }: TakeInProps) {
  const client = useQueryClient();
  const [busy, setBusy] = useState(false);
  const [taken, setTaken] = useState<string>();
  const [failure, setFailure] = useState<string>();

  async function take() {
    setBusy(true);
    setFailure(undefined);
    const cook = newId();
    const importing = {
      ...{ cook, device: newId(), tz: Intl.DateTimeFormat().resolvedOptions().timeZone, startMs },
      random: () => crypto.getRandomValues(new Uint8Array(10)),
    };
    try {
      await answerTo('/api/cooks/whole', { method: 'POST', body: eventsOf(preview, begun, importing) });
      await client.invalidateQueries({ queryKey: ['kit', 'cooks'] });
      setTaken(cook);
      onTaken();
    } catch (error) {
      setFailure(failureOf(error, 'Nothing was taken'));
    }
    setBusy(false);
  }

  return (
    <section className="outcome">
      {taken ? (
        <p role="status">
          ✓ The cook is here. <Link href={`/kit/${kitId}/learn/${taken}`}>Learn from it</Link>
        </p>
      ) : (
        <button type="button" className="main big" disabled={busy || away} onClick={() => void take()}>
          Take it in
        </button>
      )}
      {failure && <p role="alert">{failure}</p>}
    </section>
  );
}
