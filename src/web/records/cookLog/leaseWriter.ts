/**
 * Without locks, tabs ask each other who writes. A tab that nobody answers is the one; a frozen tab does not answer and is
 * passed over. For a moment two tabs may both believe it: that does no harm, for events have ids of their own and are
 * counted in the storage.
 */
import { newId } from '../newId.ts';
import type { Writer } from './writer.ts';

type Word =
  | { readonly word: 'who' }
  | { readonly word: 'here'; readonly tab: string; readonly tookOver: boolean }
  | { readonly word: 'left' };

export type Channel = Pick<BroadcastChannel, 'postMessage' | 'close' | 'onmessage'>;

export interface LeaseTimes {
  /** How long an answer is waited for, ms. */
  readonly answerMs: number;
  /** How often a reader asks whether the writer is still there, ms. */
  readonly askMs: number;
}

const usualTimes: LeaseTimes = { answerMs: 400, askMs: 5000 };

export async function leaseWriter(
  open: () => Channel,
  changed: () => void,
  { answerMs, askMs }: LeaseTimes = usualTimes,
): Promise<Writer> {
  const tab = newId();
  const channel = open();
  let isHere = false;
  let answered = () => {};
  const say = (word: Word) => channel.postMessage(word);

  function become(here: boolean) {
    if (here === isHere) return;
    isHere = here;
    changed();
  }

  const noAnswer = () =>
    new Promise<boolean>((resolve) => {
      const late = setTimeout(() => resolve(true), answerMs);
      answered = () => {
        clearTimeout(late);
        resolve(false);
      };
      say({ word: 'who' });
    });

  function claim(tookOver: boolean) {
    become(true);
    say({ word: 'here', tab, tookOver });
  }

  async function ask() {
    if (!isHere && (await noAnswer()) && asking !== undefined) claim(false);
  }

  channel.onmessage = ({ data }: MessageEvent<Word>) => {
    if (data.word === 'who' && isHere) say({ word: 'here', tab, tookOver: false });
    if (data.word === 'left') void ask();
    if (data.word !== 'here') return;
    answered();
    // Of two that claimed at once the one with the lower name writes.
    if (!isHere) return;
    if (data.tookOver || data.tab < tab) become(false);
    else say({ word: 'here', tab, tookOver: false });
  };

  let asking: ReturnType<typeof setInterval> | undefined = setInterval(ask, askMs);
  await ask();
  return {
    isHere: () => isHere,
    async takeOver() {
      claim(true);
    },
    release() {
      clearInterval(asking);
      asking = undefined;
      if (isHere) say({ word: 'left' });
      isHere = false;
      channel.close();
    },
  };
}
