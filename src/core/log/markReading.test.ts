// The faults of a thermometer that show in its own readings, each as data: what it sends, second by second, and what is made of it.
import { describe, expect, it } from 'vitest';
import { markReading, noMemory, type ReadingFault } from './markReading.ts';
import { readingAsReceived } from './readingAsReceived.ts';

type Sent = number | string | null;
type Seen = readonly [quality: string, fault: ReadingFault | undefined];
const good: Seen = ['fresh', undefined];

function watch(sent: readonly Sent[], everyS = 1): Seen[] {
  let memory = noMemory;
  return sent.map((value, n) => {
    const marked = markReading(memory, readingAsReceived('pan', value, 'Cel'), n * everyS);
    memory = marked.memory;
    expect(marked.reading.raw).toBe(typeof value === 'string' ? value.trim() : value);
    expect(marked.reading.valueC === null).toBe(marked.reading.quality === 'lost');
    return [marked.reading.quality, marked.fault];
  });
}

const jump: Seen = ['doubtful', 'jump'];
const nothing: Seen = ['lost', 'noTemperature'];
const faults: readonly (readonly [what: string, sent: readonly Sent[], everyS: number, seen: readonly Seen[]])[] = [
  ['a sensor that was lost (-127)', [130, -127, 130], 1, [good, nothing, good]],
  ['the value of a bus without an answer (0x7FFF)', [130, 32767, 130], 1, [good, nothing, good]],
  [
    '999, dashes, nothing and null',
    [130, 999, '--', '', null, 130],
    1,
    [good, nothing, nothing, nothing, nothing, good],
  ],
  [
    'words of a program',
    ['NaN', 'Infinity', 'nan', 'inf', 'offline'],
    1,
    [nothing, nothing, nothing, nothing, nothing],
  ],
  ['the value at power-up, first', [85, 21.2, 21.3], 1, [['lost', 'powerUp'], good, good]],
  ['the value at power-up, after the plug was out', [131, 85, 131], 5, [good, ['lost', 'powerUp'], good]],
  ['85 C on the way up', [83.5, 84.3, 85, 85.8], 1, [good, good, good, good]],
  ['colder than any kitchen', [21, -12, 21], 5, [good, ['doubtful', 'tooCold'], good]],
  ['a spike of one reading', [130, 141, 130.2], 1, [good, jump, good]],
  ['a spike of three readings', [130, 145, 147, 146, 130.4], 1, [good, jump, jump, jump, good]],
  ['a step that stays', [130, 100, 100.2, 100.1, 100, 100.1], 1, [good, jump, jump, jump, good, good]],
  ['a step that stays, read each 5 s', [130, 100, 100, 100], 5, [good, jump, good, good]],
  ['a spoonful of cold water', [140, 137, 134, 133, 134], 1, [good, good, good, good, good]],
  ['a fast climb', [20, 26, 32, 38, 44], 1, [good, good, good, good, good]],
  ['another cook, an hour later', [150, 21, 21.5], 3600, [good, good, good]],
  ['a gap of a minute in a fast climb', [60, 100, 106], 60, [good, good, good]],
];

describe('a thermometer that sends', () => {
  it.each(faults)('%s', (_, sent, everyS, seen) => {
    expect(watch(sent, everyS)).toEqual(seen);
  });
});

it('leaves Fahrenheit sent as Celsius to be asked about, once it is more than a spike', () => {
  const sent = [130, 266, 266.2, 266.1, 266.3].map((value) => value);
  expect(watch(sent, 5)).toEqual([good, jump, good, good, good]);
});

it('never changes what was sent', () => {
  const reading = readingAsReceived('pan', 212, '[degF]');
  expect(markReading(noMemory, reading, 0).reading).toEqual(reading);
});
