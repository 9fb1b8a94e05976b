/** How far this device's clock is off the server's: measured again and again, the sample least long on its way believed. */
import { bestClockSample, type ClockSample, clockSample } from '../../../core/log/clockOffset.ts';
import { instantMs } from '../../../core/log/instant.ts';
import type { Clocks } from './deviceClock.ts';

/** Samples kept: the two clocks drift apart, so that an old one is worth less. Eight as in the clock filter of RFC 5905, section 10 (from memory). */
const samplesKept = 8;

export interface ServerClock {
  /** Asks the server once; no answer changes nothing. */
  measure(): Promise<void>;
  /** As last measured in this run of the device's clock; null before. */
  sample(): ClockSample | null;
  /** A new run of the device's clock: what was measured before says nothing about it. */
  forget(): void;
}

export type AskTime = () => Promise<{ readonly received: string; readonly sent: string }>;

export function serverClock(ask: AskTime, { wallMs, monoMs }: Clocks): ServerClock {
  let samples: ClockSample[] = [];
  let run = 0;
  return {
    async measure() {
      const [asked, askedMono, askedIn] = [wallMs(), monoMs(), run];
      const answer = await ask().catch(() => undefined);
      if (answer === undefined || askedIn !== run) return;
      // Counted on by the monotonic clock, so that a wall clock set in between does no harm.
      const answered = asked + (monoMs() - askedMono);
      const sample = clockSample({
        asked,
        received: instantMs(answer.received),
        sent: instantMs(answer.sent),
        answered,
      });
      samples = [...samples, sample].slice(-samplesKept);
    },
    sample: () => bestClockSample(samples) ?? null,
    forget() {
      samples = [];
      run += 1;
    },
  };
}
