/**
 * Speech, one saying at a time. Browsers keep one queue for all pages; ours holds a single saying back, so that what is
 * urgent cuts in, and advice that is out of date is never said.
 */

/** The lower, the more urgent. */
export const rankOfSaying = { 'act now': 0, 'act soon': 1, 'keep in mind': 2, advice: 3 } as const;
export type Rank = (typeof rankOfSaying)[keyof typeof rankOfSaying];

interface Saying {
  readonly words: string;
  readonly rank: Rank;
}

export interface Voice {
  say(words: string, rank: Rank): void;
  stop(): void;
}

/** Not a failure: we, or another page, cut it short, or nobody has tapped on the page yet. */
const passing = ['canceled', 'interrupted', 'not-allowed'];

/** @param onFailure the device can't speak, as with `synthesis-failed` */
export function createVoice(
  speech: SpeechSynthesis,
  utteranceOf: (words: string) => SpeechSynthesisUtterance,
  onFailure: () => void,
): Voice {
  let now: Saying | undefined;
  let next: Saying | undefined;

  function start(saying: Saying): void {
    now = saying;
    const utterance = utteranceOf(saying.words);
    const over = () => {
      if (now !== saying) return;
      now = undefined;
      const waiting = next;
      next = undefined;
      if (waiting) start(waiting);
    };
    utterance.onend = over;
    utterance.onerror = ({ error }) => {
      over();
      if (!passing.includes(error)) onFailure();
    };
    speech.speak(utterance);
  }

  return {
    say(words, rank) {
      const saying = { words, rank };
      const cutsIn = now && (rank < now.rank || (rank === now.rank && rank === rankOfSaying.advice));
      if (now && !cutsIn) {
        if (!next || rank <= next.rank) next = saying;
        return;
      }
      if (cutsIn) speech.cancel();
      start(saying);
    },
    stop() {
      now = undefined;
      next = undefined;
      speech.cancel();
    },
  };
}

const voicesWithinMs = 2000;

/** Voices may come late; without any, nothing can be said. */
export async function hasVoices(speech: SpeechSynthesis): Promise<boolean> {
  if (speech.getVoices().length > 0) return true;
  await new Promise((done) => {
    speech.addEventListener('voiceschanged', done, { once: true });
    setTimeout(done, voicesWithinMs);
  });
  return speech.getVoices().length > 0;
}
