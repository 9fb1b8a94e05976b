/** The newest plan for a request and a kit, and, once there, its bands. */
import { useEffect, useState } from 'react';
import type { Kit } from '../../../core/pan/kit.ts';
import type { Account } from '../../../core/planning/account.ts';
import type { PlanRequest } from '../../../core/planning/request.ts';
import type { Bands } from '../../parts/panLine/picture.ts';
import { ask, listen } from './planner.ts';
import type { Outcome } from './planner.worker.ts';

export interface Planning {
  readonly outcome: Outcome | undefined;
  readonly bands: Bands | undefined;
  /** What it comes to; there with the first bands. */
  readonly account: Account | undefined;
}

export function usePlanner(request: PlanRequest, kit: Kit): Planning {
  const [planning, setPlanning] = useState<Planning>({ outcome: undefined, bands: undefined, account: undefined });

  useEffect(
    () =>
      listen({
        planned(outcome) {
          if (outcome.kind === 'plan') performance.measure('central plan', { start: 0, duration: outcome.tookMs });
          setPlanning({ outcome, bands: undefined, account: undefined });
        },
        forecast({ bands, account, tookMs }) {
          performance.measure(`${bands.forecast.draws} draws`, { start: 0, duration: tookMs });
          setPlanning(({ outcome }) => ({ outcome, bands, account }));
        },
      }),
    [],
  );
  useEffect(() => ask(request, kit), [request, kit]);
  return planning;
}
