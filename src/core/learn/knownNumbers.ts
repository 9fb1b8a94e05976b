/** What is known of each number of a kitchen that is shown: as stated of any such kit, as measured by a check, and now. */
import type { Kit } from '../pan/kit.ts';
import type { Range } from '../twin/range.ts';
import { type KitchenNumber, kitchenNumbers, rangesOf } from './changes.ts';
import type { CheckKind } from './checks/check.ts';
import { checkWords } from './words.ts';

export interface KnownNumber {
  readonly name: KitchenNumber;
  readonly stated: Range;
  readonly now: Range;
  /** Spread now over that of any such kit. */
  readonly narrowing: number;
  /** The latest check that found it, by itself. */
  readonly measured: { readonly by: string; readonly range: Range } | undefined;
}

export function knownNumbers(kit: Kit): readonly KnownNumber[] {
  const { learned, ...plain } = kit;
  const stated = rangesOf(plain);
  const now = rangesOf(kit);
  return (Object.keys(kitchenNumbers) as KitchenNumber[]).map((name) => {
    const lesson = learned?.lessons.findLast(({ measured }) => measured?.some((one) => one.name === name));
    const range = lesson?.measured?.find((one) => one.name === name);
    const by = lesson && (checkWords[lesson.name as CheckKind] ?? lesson.name).toLowerCase();
    return {
      name,
      stated: stated[name].range,
      now: now[name].range,
      narrowing: now[name].spread / stated[name].spread,
      measured: range && by ? { by, range } : undefined,
    };
  });
}
