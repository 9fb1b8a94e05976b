/**
 * The device's two clocks. The monotonic one may stand still while the device sleeps, and the wall clock may be set: when
 * they go apart, a new run of the monotonic clock begins, and the log is told.
 */
import type { EventBodies } from '../../../core/log/bodies.ts';
import { newId } from '../newId.ts';

/** A step between the two clocks that is more than drift, ms. */
const jumpMs = 2000;

export interface Clocks {
  /** ms since 1970. */
  wallMs(): number;
  /** ms since an origin of its own; never goes back. */
  monoMs(): number;
}

export const browserClocks: Clocks = { wallMs: () => Date.now(), monoMs: () => performance.now() };

export interface DeviceClock {
  /** Compares the clocks. To be called every few seconds, so that drift never looks like a jump. */
  look(): EventBodies['clock'] | null;
  bootId(): string;
}

export function deviceClock({ wallMs, monoMs }: Clocks): DeviceClock {
  let bootId = newId();
  let looked = { wallMs: wallMs(), monoMs: monoMs() };
  return {
    look() {
      const look = { wallMs: wallMs(), monoMs: monoMs() };
      const passed = { wallMs: look.wallMs - looked.wallMs, monoMs: look.monoMs - looked.monoMs };
      looked = look;
      if (Math.abs(passed.wallMs - passed.monoMs) <= jumpMs) return null;
      bootId = newId();
      return passed;
    },
    bootId: () => bootId,
  };
}
