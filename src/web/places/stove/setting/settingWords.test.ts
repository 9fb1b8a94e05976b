import { expect, it } from 'vitest';
import { settingWords } from './settingWords.ts';

const glassC = { low: 25, mid: 30, high: 35 };

it('names the likeliest first, leaves out what hardly counts, and is never certain', () => {
  expect(settingWords({ glassC, breaksDry: 1, turnsSticky: 0, staysSticky: 0 })).toBe(
    'Likeliest, it snaps and breaks dry: more than 9 in 10.',
  );
  expect(settingWords({ glassC, breaksDry: 0.02, turnsSticky: 0.3, staysSticky: 0.68 })).toBe(
    'Likeliest, it stays soft and sticky: 7 in 10; sets like glass, but its surface turns sticky with time: 3 in 10.',
  );
});
