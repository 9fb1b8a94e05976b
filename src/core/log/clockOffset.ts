/** How far a device's clock is off the server's, from the four time stamps of one question and answer (RFC 5905, section 8; from memory). */

/** The device's clock when it asked and when it had the answer, the server's when the question came and the answer went; ms. */
export interface Exchange {
  readonly asked: number;
  readonly received: number;
  readonly sent: number;
  readonly answered: number;
}

export interface ClockSample {
  readonly clockOffsetMs: number;
  readonly clockErrMs: number;
}

/** Server's clock less the device's. The error is at most half of the time spent on the way, however unequal the two ways are. */
export function clockSample({ asked, received, sent, answered }: Exchange): ClockSample {
  const onTheWayMs = answered - asked - (sent - received);
  // Each stamp is cut to whole milliseconds, so the two clocks may seem to lie one further apart than the way allows.
  return { clockOffsetMs: (received - asked + sent - answered) / 2, clockErrMs: Math.max(0, onTheWayMs) / 2 + 1 };
}

/** The sample that spent the least time on the way: of several, the one to believe. */
export function bestClockSample(samples: readonly ClockSample[]): ClockSample | undefined {
  return samples.reduce<ClockSample | undefined>(
    (best, sample) => (best && best.clockErrMs <= sample.clockErrMs ? best : sample),
    undefined,
  );
}
