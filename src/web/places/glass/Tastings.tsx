/** How the beer tasted, and when to taste it again. */

import { useState } from 'react';
import type { TastingRecord } from '../../../api/tasting.ts';
import { type Notice, NoticeLine } from '../../parts/NoticeLine.tsx';
import { failureOf } from '../../records/failureOf.ts';
import { newId } from '../../records/newId.ts';
import { useKeepTasting, useRemoveTasting, useTastings } from '../../records/useTastings.ts';
import type { GlassBase } from './draft.ts';
import { Reminders } from './Reminders.tsx';
import { TastingForm } from './TastingForm.tsx';
import { TastingList } from './TastingList.tsx';
import type { GlassHand } from './useGlass.ts';

export function Tastings({ hand, kept }: { readonly hand: GlassHand; readonly kept: boolean }) {
  const { base, sheet } = hand.draft;
  return (
    <section className="tastings" aria-labelledby="glass-tastings">
      <h2 id="glass-tastings">Tastings</h2>
      <Reminders bottledOn={sheet.good.bottledOn} keptId={kept ? base?.id : undefined} />
      {base ? (
        <KeptTastings key={base.id} base={base} />
      ) : (
        <p className="quiet">Keep the glass first: a tasting belongs to one.</p>
      )}
    </section>
  );
}

function KeptTastings({ base }: { readonly base: GlassBase }) {
  const tastings = useTastings(base.id);
  const keeping = useKeepTasting(base.id);
  const removing = useRemoveTasting(base.id);
  const [notice, setNotice] = useState<Notice>();
  const failed = (error: unknown) => setNotice({ says: failureOf(error, 'Not done') });

  function remove(record: TastingRecord) {
    removing.mutate(record, {
      onError: failed,
      onSuccess: () =>
        setNotice({
          says: 'Taken away.',
          undo: () =>
            keeping.mutate(record, {
              onError: failed,
              onSuccess: () => setNotice({ says: 'It is there again.' }),
            }),
        }),
    });
  }

  return (
    <>
      <TastingForm
        bottledOn={base.glass.bottledOn}
        busy={keeping.isPending}
        onKeep={(tasting, done) =>
          keeping.mutate(
            { id: newId(), tasting },
            {
              onError: failed,
              onSuccess() {
                setNotice({ says: 'Tasting kept.' });
                done();
              },
            },
          )
        }
      />
      <div className="glass-notice" role="status">
        <NoticeLine notice={notice} />
      </div>
      <TastingList tastings={tastings.data ?? []} onRemove={remove} />
    </>
  );
}
