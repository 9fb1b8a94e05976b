/** What a deed will do: some members of the twin carried forward with it, done after the time that a person needs to act. */
import { advance } from '../pan/advance.ts';
import { perform } from '../pan/deeds.ts';
import type { Kit } from '../pan/kit.ts';
import type { Deed } from '../pan/steps.ts';
import type { Twin } from '../twin/twin.ts';

export interface Horizon {
  /** From the advice to the act, s. */
  readonly reactionS: number;
  readonly everyS: number;
  readonly rows: number;
  readonly members: number;
}

export interface Outlook {
  readonly everyS: number;
  /** Temperatures of the syrup, rows of time x members, C; the first row is now. */
  readonly temperatureC: readonly Float64Array[];
}

const tolerance = 1e-3;

export function outlook(twin: Twin, kit: Kit, deeds: readonly Deed[], horizon: Horizon): Outlook {
  const { reactionS, everyS, rows, members } = horizon;
  const copies = twin.copies(members);
  const temperatureC = Array.from({ length: rows + 1 }, () => new Float64Array(members));
  copies.forEach(({ y, pan }, m) => {
    temperatureC[0][m] = twin.members[Math.floor((m * twin.members.length) / members)].temperatureC;
    let at = 0;
    let stepS: number | undefined;
    let done = deeds.length === 0;
    const goTo = (to: number) => {
      stepS = advance(pan, y, to - at, tolerance, stepS);
      at = to;
    };
    for (let row = 1; row <= rows; row++) {
      const to = row * everyS;
      if (!done && reactionS < to) {
        goTo(reactionS);
        for (const deed of deeds) perform(deed, y, pan, kit);
        stepS = undefined;
        done = true;
      }
      goTo(to);
      temperatureC[row][m] = pan.view.temperatureC;
    }
  });
  return { everyS, temperatureC };
}

/** Share of the members that are above a temperature at some row. */
export function shareEverAbove({ temperatureC }: Outlook, limitC: number): number {
  const members = temperatureC[0].length;
  let above = 0;
  for (let m = 0; m < members; m++) if (temperatureC.some((row) => row[m] > limitC)) above++;
  return above / members;
}

/** Share of the members that are outside a band at some row. */
export function shareEverOutside({ temperatureC }: Outlook, [lowC, highC]: readonly [number, number]): number {
  const members = temperatureC[0].length;
  let outside = 0;
  for (let m = 0; m < members; m++) if (temperatureC.some((row) => row[m] < lowC || row[m] > highC)) outside++;
  return outside / members;
}

/** The same no further than so many seconds ahead. */
export function upTo(view: Outlook, seconds: number): Outlook {
  return { ...view, temperatureC: view.temperatureC.slice(0, Math.floor(seconds / view.everyS) + 1) };
}

/** Mean cost of being outside the band, K min: above it counts by the square, below it gently. */
export function costOf(view: Outlook, [lowC, highC]: readonly [number, number], approaching: boolean): number {
  const { temperatureC, everyS } = view;
  let cost = 0;
  for (let row = 1; row < temperatureC.length; row++) {
    for (const t of temperatureC[row]) {
      if (t > highC) cost += t - highC + (t - highC) ** 2;
      else if (t < lowC) cost += approaching ? 0.4 * (lowC - t) : lowC - t + 0.3 * (lowC - t) ** 2;
    }
  }
  return (cost * everyS) / 60 / temperatureC[0].length;
}
