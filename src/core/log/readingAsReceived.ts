/** A reading from what a thermometer sent, in the unit that it declared. Nothing is guessed: what is no temperature is no reading. */
import { fromUcum } from '../units/ucum.ts';
import type { Reading, ReadingUnit } from './bodies.ts';
import { eventRanges } from './ranges.ts';

/**
 * The reading in C, with what was sent beside it. Numbers outside -40 to 400 C (such as -127 of a digital probe that lost its
 * sensor) and what is no number (`--`, nothing) become a lost reading.
 */
export function readingAsReceived(probe: string, sent: number | string | null, unit: ReadingUnit): Reading {
  const text = typeof sent === 'string' ? sent.trim() : sent;
  const value = typeof text === 'string' && /^[+-]?\d+(?:[.,]\d*)?$/.test(text) ? Number(text.replace(',', '.')) : text;
  const raw = typeof value === 'number' ? value : text;
  const valueC = typeof value === 'number' ? celsius(value, unit) : null;
  return { probe, valueC, quality: valueC === null ? 'lost' : 'fresh', unit, raw };
}

function celsius(value: number, unit: ReadingUnit): number | null {
  const [least, most] = eventRanges.valueC;
  try {
    const valueC = fromUcum({ value, unit }, 'temperature');
    return valueC >= least && valueC <= most ? valueC : null;
  } catch {
    return null;
  }
}
