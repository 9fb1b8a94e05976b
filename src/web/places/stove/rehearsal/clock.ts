/** The clock of a rehearsal: cook time against real time. It never hurries to catch up: what the machine can't do, it does later. */
import type { Pace } from '../view.ts';

interface Clocked {
  /** Does the cook ask for real pace just now? */
  slow(): boolean;
  over(): boolean;
  timeS(): number;
  moveTo(timeS: number): void;
}

export interface Clock {
  run(running: boolean): void;
  setSpeed(speed: number): void;
  setSlowsForActs(slows: boolean): void;
  /** Cuts short the wait under way, as after a deed. */
  wake(): void;
  pace(): Pace;
}

/** Cook seconds between two looks: small enough to see time pass, and never past the next reading. */
function strideS(timeS: number, pace: number): number {
  const wished = pace <= 10 ? pace / 4 : pace < 60 ? 5 : 10;
  const untilReading = 10 - (timeS % 10);
  return Math.min(wished, untilReading);
}

/** The measured pace looks back over about this many strides at full speed. */
const memory = 12;

export function createClock(of: Clocked): Clock {
  let running = false;
  let asked = 10;
  let slowsForActs = true;
  let measured: number | undefined;
  let looping = false;
  let cutShort: () => void = () => {};

  const slowed = (): boolean => slowsForActs && asked > 1 && of.slow();

  const wait = (ms: number): Promise<void> =>
    new Promise((resolve) => {
      const timer = setTimeout(resolve, ms);
      cutShort = () => {
        clearTimeout(timer);
        resolve();
      };
    });

  async function loop(): Promise<void> {
    looping = true;
    let spentMs = 0;
    while (running && !of.over()) {
      const begun = performance.now();
      const pace = slowed() ? 1 : asked;
      const stride = strideS(of.timeS(), pace);
      await wait(Math.max(0, (1000 * stride) / pace - spentMs));
      if (!running) break;
      const waited = performance.now() - begun;
      // A wait cut short has earned only its part of the stride.
      const share = Math.min(1, (waited + spentMs) / ((1000 * stride) / pace));
      const working = performance.now();
      if (!of.over()) of.moveTo(of.timeS() + stride * share);
      spentMs = performance.now() - working;
      if (pace === asked && share === 1 && stride > 1e-3) measure((1000 * stride * share) / (waited + spentMs));
    }
    looping = false;
  }

  function measure(now: number): void {
    measured = measured === undefined ? now : measured + (now - measured) / memory;
  }

  return {
    run(run) {
      running = run;
      if (!run) cutShort();
      else if (!looping) void loop();
    },
    setSpeed(speed) {
      asked = speed;
      measured = undefined;
      cutShort();
    },
    setSlowsForActs(slows) {
      slowsForActs = slows;
      cutShort();
    },
    wake: () => cutShort(),
    pace: () => ({ running, asked, measured, slowed: slowed(), slowsForActs }),
  };
}
