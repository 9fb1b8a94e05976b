/** What a rehearsal plays on: the pan, the plan and kit, the screen and the pace. */
import type { Rehearsal } from '../../core/advice/rehearsal.ts';
import type { Kit } from '../../core/pan/kit.ts';
import type { Step } from '../../core/pan/steps.ts';
import type { Screen } from './screen.ts';

export interface Stage {
  readonly rehearsal: Rehearsal;
  readonly kit: Kit;
  readonly steps: readonly Step[];
}

export interface Pacing {
  readonly screen: Screen;
  /** Cook seconds for each second; infinite: as fast as it goes. */
  readonly speed: number;
  readonly longestS: number;
}
