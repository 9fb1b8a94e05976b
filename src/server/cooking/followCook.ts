/**
 * What one screen that follows a cook is sent: first where the cook stands (or, coming back, what it missed), then each
 * event once and in the order of its place, and a beat by which it can tell that it is not looking at an old picture.
 */
import type { StampedEvent } from '../../core/log/event.ts';
import { lastEvent, readEvents } from '../store/events.ts';
import type { Store } from '../store/store.ts';
import type { EventStream } from './eventStream.ts';
import type { Logbook, News } from './logbook.ts';
import { snapshotOf } from './snapshot.ts';

export interface Following {
  readonly cook: string;
  /** Place of the last event that the screen has; undefined when it has none. */
  readonly since: number | undefined;
  readonly beatMs: number;
}

export async function followCook(stream: EventStream, { db }: Store, logbook: Logbook, following: Following) {
  const { cook, since, beatMs } = following;
  let lastSeq = 0;
  let early: News[] | undefined = [];
  const deliver = (news: News) => {
    if (news.kind === 'logged') sendEvent(news.event);
    else if (news.kind === 'putBack') sendSnapshot().catch(stream.breakOff);
    else stream.send(news.kind, news.kind === 'pending' ? news.event : news.storage);
  };
  const sendEvent = (event: StampedEvent) => {
    if (event.seq <= lastSeq) return;
    lastSeq = event.seq;
    stream.send('logged', event, event.seq);
  };
  const sendSnapshot = async () => {
    const snapshot = await snapshotOf(db, cook, logbook.now());
    lastSeq = snapshot?.lastSeq ?? 0;
    stream.send('snapshot', snapshot ?? null, lastSeq);
  };
  const beat = () => stream.send('beat', { tServer: logbook.now(), lastSeq, storage: logbook.storage() });

  // Whatever is told while the store is read waits, so that nothing falls in between.
  const stop = logbook.follow(cook, (news) => (early ? early.push(news) : deliver(news)));
  const beats = setInterval(beat, beatMs);
  stream.onEnd(() => {
    stop();
    clearInterval(beats);
  });

  const known = since !== undefined && since <= ((await lastEvent(db, cook))?.seq ?? 0);
  if (known) {
    lastSeq = since;
    for (const event of (await readEvents(db, cook, since)).events) sendEvent(event);
  } else {
    // Also for a screen that has seen later events than there are: the store was put back to a backup.
    await sendSnapshot();
  }
  beat();
  for (const news of early) deliver(news);
  early = undefined;
}
