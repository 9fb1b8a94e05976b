/** Learns from the log of one cook, and tells how long it took. Runs in Node and in a worker of a page. */
import { type LogLesson, learnFromLog } from '../../src/core/learn/fromLog.ts';

export interface LessonTime {
  /** How it ended; of one that ended otherwise than `learned` the time tells nothing. */
  readonly ended: string;
  readonly ms: number;
}

export function lessonTime(lesson: Pick<LogLesson, 'events' | 'kit'>): LessonTime {
  const begun = performance.now();
  const { kind } = learnFromLog(lesson);
  return { ended: kind, ms: performance.now() - begun };
}
