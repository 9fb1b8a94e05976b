/** The way of every thermometer's readings into the log, however they came: as declared, marked by what it showed before, written. */

import type { Reading, ReadingUnit } from '../../core/log/bodies.ts';
import { markReading, noMemory, type ProbeMemory, type ReadingFault } from '../../core/log/markReading.ts';
import { readingAsReceived } from '../../core/log/readingAsReceived.ts';
import type { Logbook } from '../cooking/logbook.ts';
import type { Appended } from '../store/events.ts';

export interface MarkedReading {
  readonly reading: Reading;
  readonly fault: ReadingFault | undefined;
}

export type Intake = ReturnType<typeof createIntake>;

/** Thermometers that are remembered: more than any kitchen has. */
const mostProbes = 200;

export function createIntake(logbook: Logbook, nowMs: () => number) {
  const memories = new Map<string, ProbeMemory>();

  return {
    /** @param source tells apart thermometers of one name that come by different ways */
    mark(source: string, probe: string, raw: number | string | null, unit: ReadingUnit): MarkedReading {
      const key = `${source} ${probe}`;
      const before = memories.get(key) ?? noMemory;
      const { reading, fault, memory } = markReading(before, readingAsReceived(probe, raw, unit), nowMs() / 1000);
      memories.delete(key);
      memories.set(key, memory);
      if (memories.size > mostProbes) memories.delete([...memories.keys()][0] ?? '');
      return { reading, fault };
    },

    write: (cook: string, { reading }: MarkedReading): Promise<Appended> =>
      logbook.append(cook, [logbook.make(cook, 'reading', reading)]),
  };
}
