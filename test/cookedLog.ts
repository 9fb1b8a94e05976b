// A whole simulated cook, noted by a device of the tests.
import { type SimulatedCook, type SimulatedLog, simulatedLog } from '../src/core/book/simulatedLog.ts';
import type { Begun } from '../src/core/log/bodies.ts';
import type { Kit } from '../src/core/pan/kit.ts';
import { defaultRequest } from '../src/core/planning/request.ts';
import { sampleDevice } from './sampleCook.ts';

type Cooking = Partial<Pick<SimulatedCook, 'request' | 'waterTimes' | 'noiseSeed'>>;

/** The same kit and seed give the same cook under another id. */
export function cookedLog(
  kit: Kit,
  seed: number,
  mode: Begun['mode'] = 'live',
  cook = `cook-${seed}`,
  { request = defaultRequest, ...otherwise }: Cooking = {},
): SimulatedLog {
  return simulatedLog({ request, kit, mode, planId: null, seed, ...otherwise }, sampleDevice(cook).make);
}
