/** Several readings in one option. */
import type { Input } from '../input.ts';
import { misused } from '../stop.ts';

export function listOf(meaning: string, one: Input<number>): Input<readonly number[]> {
  return {
    ...{ placeholder: '<list>', meaning, required: true },
    read: (text, flag) => partsOf(text).map((part) => one.read(part, flag)),
  };
}

export function pairsOf(
  meaning: string,
  first: Input<number>,
  second: Input<number>,
): Input<readonly (readonly [number, number])[]> {
  return {
    ...{ placeholder: '<list>', meaning, required: true },
    read(text, flag) {
      const pairs = partsOf(text).map((part): [number, number] => {
        const [one, other, more] = part.split(':');
        if (!one || !other || more !== undefined) misused(flag, part, 'is no pair', 'written like 20s:31.5');
        return [first.read(one, flag), second.read(other, flag)];
      });
      const back = pairs.findIndex(([time], i) => i > 0 && time < (pairs[i - 1]?.[0] ?? 0));
      if (back >= 0) misused(flag, partsOf(text)[back] ?? '', 'is earlier than the one before', 'times in their order');
      return pairs;
    },
  };
}

const partsOf = (text: string): string[] =>
  text
    .split(',')
    .map((part) => part.trim())
    .filter(Boolean);
