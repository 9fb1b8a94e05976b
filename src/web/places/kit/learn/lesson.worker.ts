/** Learns beside the page: the fit takes some seconds. Who wants it no longer ends the worker. */
import { expose } from 'comlink';
import { type Change, changesBy } from '../../../../core/learn/changes.ts';
import { type LogLearning, type LogLesson, learnFromLog } from '../../../../core/learn/fromLog.ts';
import type { Kit } from '../../../../core/pan/kit.ts';
import { type NextPlan, nextPlan } from '../../../../core/planning/nextPlan.ts';
import type { PlanRequest } from '../../../../core/planning/request.ts';

export interface Lesson {
  readonly learning: LogLearning;
  readonly changes: readonly Change[];
  readonly tookMs: number;
}

const teacher = {
  learn(lesson: Omit<LogLesson, 'onRun'>, onRuns: (runs: number) => void): Lesson {
    const begun = performance.now();
    let toldMs = begun;
    const learning = learnFromLog({
      ...lesson,
      onRun(runs) {
        const now = performance.now();
        if (now - toldMs < tellEachMs) return;
        toldMs = now;
        onRuns(runs);
      },
    });
    const changes = learning.kind === 'learned' ? changesBy(lesson.kit, learning.learned) : [];
    return { learning, changes, tookMs: performance.now() - begun };
  },
  nextPlan: (request: PlanRequest, before: Kit, after: Kit): NextPlan | undefined => nextPlan(request, before, after),
};

const tellEachMs = 200;

export type Teacher = typeof teacher;

expose(teacher);
