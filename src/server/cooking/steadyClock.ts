/**
 * The server's clock as the logs need it: it follows the system's wall clock and never goes back. When the system's clock
 * jumps ahead of the monotonic one, the machine slept or was set, and it follows; when it is set back, it does not.
 */

/** A step between the two clocks that is more than drift, ms. */
const jumpMs = 2000;

/** What each clock says has passed between the last look before a jump and the first after it. */
export interface ClockJump {
  readonly wallMs: number;
  readonly monoMs: number;
}

export interface SteadyClock {
  /** ms since 1970. */
  nowMs(): number;
  /** The same as text. */
  now(): string;
  /** Jumps seen since the last call. */
  jumps(): ClockJump[];
}

export function steadyClock(wall: () => number = Date.now, mono: () => number = () => performance.now()): SteadyClock {
  let looked = { wall: wall(), mono: mono() };
  /** What is added to the wall clock. */
  let addedMs = 0;
  let lastMs = looked.wall;
  let seen: ClockJump[] = [];
  const nowMs = () => {
    const look = { wall: wall(), mono: mono() };
    const jump = { wallMs: look.wall - looked.wall, monoMs: look.mono - looked.mono };
    const stepMs = jump.wallMs - jump.monoMs;
    looked = look;
    if (Math.abs(stepMs) > jumpMs) {
      seen.push(jump);
      // Set back: go on as before. Ahead: whatever is still added is taken back first.
      addedMs = Math.max(0, addedMs - stepMs);
    }
    lastMs = Math.max(lastMs, Math.round(look.wall + addedMs));
    return lastMs;
  };
  return {
    nowMs,
    now: () => new Date(nowMs()).toISOString(),
    jumps() {
      nowMs();
      const jumps = seen;
      seen = [];
      return jumps;
    },
  };
}
