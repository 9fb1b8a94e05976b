/** A lesson under way: its log, the fit with its progress, and what it changes in the next plan. */
import { proxy, type Remote, wrap } from 'comlink';
import { useCallback, useEffect, useRef, useState } from 'react';
import type { LogEvent } from '../../../../core/log/event.ts';
import type { Kit } from '../../../../core/pan/kit.ts';
import type { NextPlan } from '../../../../core/planning/nextPlan.ts';
import type { PlanRequest } from '../../../../core/planning/request.ts';
import type { Observation } from '../../../../core/twin/observe.ts';
import { cookEvents } from './cookEvents.ts';
import type { Lesson, Teacher } from './lesson.worker.ts';

export type LessonState =
  | { readonly kind: 'idle' }
  | { readonly kind: 'running'; readonly runs: number }
  | { readonly kind: 'failed'; readonly message: string }
  | { readonly kind: 'done'; readonly lesson: Lesson; readonly next: NextPlan | 'reckoning' | undefined };

export interface Asked {
  readonly cook: string;
  readonly kit: Kit;
  readonly measured: readonly Observation[];
  readonly rehearsed: boolean;
}

export function useLesson() {
  const [state, setState] = useState<LessonState>({ kind: 'idle' });
  const worker = useRef<Worker>(undefined);
  const end = useCallback(() => {
    worker.current?.terminate();
    worker.current = undefined;
  }, []);
  useEffect(() => end, [end]);

  async function start(asked: Asked): Promise<void> {
    end();
    setState({ kind: 'running', runs: 0 });
    const own = new Worker(new URL('./lesson.worker.ts', import.meta.url), { type: 'module' });
    worker.current = own;
    const isOwn = () => worker.current === own;
    try {
      const teacher = wrap<Teacher>(own);
      const events = await cookEvents(asked.cook);
      const at = new Date().toISOString();
      const tell = proxy((runs: number) => isOwn() && setState({ kind: 'running', runs }));
      const lesson = await teacher.learn({ ...asked, events, at }, tell);
      if (!isOwn()) return;
      setState({ kind: 'done', lesson, next: 'reckoning' });
      const next = await nextOf(teacher, asked.kit, lesson, events);
      if (isOwn()) setState({ kind: 'done', lesson, next });
    } catch (error) {
      if (isOwn()) setState({ kind: 'failed', message: error instanceof Error ? error.message : String(error) });
    }
  }

  return {
    state,
    start,
    cancel() {
      end();
      setState({ kind: 'idle' });
    },
  };
}

/** The plan of this very cook, made again. */
async function nextOf(
  teacher: Remote<Teacher>,
  kit: Kit,
  { learning }: Lesson,
  events: readonly LogEvent[],
): Promise<NextPlan | undefined> {
  if (learning.kind !== 'learned') return undefined;
  const begun = events.find(({ kind }) => kind === 'begun');
  const request = (begun?.body as { readonly request?: PlanRequest } | undefined)?.request;
  if (!request) return undefined;
  // A request that an older Umberpan made may lack what this one asks for.
  return teacher.nextPlan(request, kit, { ...kit, learned: learning.learned }).catch(() => undefined);
}
