/** Energy that a planned cook takes from the mains or the gas pipe: the dial's setting over time. */
import type { Course } from '../../pan/course.ts';
import type { Stove } from '../../pan/kit.ts';

const joulesPerKWh = 3.6e6;

/** @returns kWh; a ring that goes on after it is turned off has had that heat before */
export function energyKWh({ deeds, steps }: Pick<Course, 'deeds' | 'steps'>, { ratedPowerW, notches }: Stove): number {
  const turns = deeds.flatMap(({ timeS, deed }) => (deed.kind === 'heat' ? [{ timeS, notch: deed.notch }] : []));
  const endS = steps.at(-1)?.endS ?? 0;
  const notchSeconds = turns.reduce(
    (sum, { timeS, notch }, i) => sum + notch * ((turns[i + 1]?.timeS ?? endS) - timeS),
    0,
  );
  return (notchSeconds * ratedPowerW) / notches / joulesPerKWh;
}
