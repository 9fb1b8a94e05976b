import { describe, expect, it } from 'vitest';
import { alarmIds } from '../../../../core/advice/alarms/catalogue.ts';
import { alarmSaying, mostWords, saying } from './sayings.ts';

const count = (words: string) => words.split(/\s+/).length;

describe('what the voice says', () => {
  it('is the act first, then the number', () => {
    expect(alarmSaying('scorch', '189 degrees.')).toBe('Off the heat now. No water. 189 degrees.');
  });

  it('is the whole act of every alarm, in twelve words at most', () => {
    for (const id of alarmIds) {
      expect(count(alarmSaying(id, '149 degrees.'))).toBeLessThanOrEqual(mostWords);
      expect(alarmSaying(id, '149 degrees.').startsWith(alarmSaying(id))).toBe(true);
    }
  });

  it('leaves out the number, then the last sentences, then the last words', () => {
    expect(saying('One two three four five six seven eight nine ten eleven.', '149 degrees.')).toBe(
      'One two three four five six seven eight nine ten eleven.',
    );
    expect(saying('Turn down to two. Then stir it well for a minute and look at it again.')).toBe('Turn down to two.');
    expect(saying('a b c d e f g h i j k l m n')).toBe('a b c d e f g h i j k l');
  });
});
