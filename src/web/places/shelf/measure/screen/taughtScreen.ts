/** Greys that were matched on this device's screen. Kept on the device, because they tell of its screen alone. */
import { useSyncExternalStore } from 'react';
import {
  levelRange,
  matched,
  matchedShares,
  matchesAgree,
  type ScreenMatches,
  steepnessOf,
} from '../../../../../core/colour/screen.ts';
import { keep, kept } from '../../../../parts/browserStorage.ts';
import { heldValue } from '../../../../parts/heldValue.ts';

export interface TaughtScreen {
  readonly at: string;
  readonly matches: ScreenMatches;
  readonly steepness: number;
}

const key = 'umberpan.screen';
const held = heldValue(screenIn(kept(key)));

/** What a stored text holds; what is not understood teaches nothing. */
export function screenIn(text: string | null): TaughtScreen | undefined {
  try {
    const stored: { at?: string; matches?: ScreenMatches } | null = JSON.parse(text ?? 'null');
    const { at, matches } = stored ?? {};
    if (at === undefined || Number.isNaN(Date.parse(at)) || !matches || !matched.every(isLevel(matches))) return;
    return matchesAgree(matches) ? { at, matches, steepness: steepnessOf(matches) } : undefined;
  } catch {
    return undefined;
  }
}

function isLevel(matches: ScreenMatches) {
  return (which: keyof ScreenMatches): boolean => {
    const [low, high] = levelRange(matchedShares[which]);
    return matches[which] >= low && matches[which] <= high;
  };
}

export function useTaughtScreen(): TaughtScreen | undefined {
  return useSyncExternalStore(held.subscribe, held.now);
}

/** @param matches two that agree, see `matchesAgree` */
export function teachScreen(at: string, matches: ScreenMatches): void {
  become(JSON.stringify({ at, matches }));
}

export function forgetScreen(): void {
  become('null');
}

function become(text: string): void {
  keep(key, text);
  held.become(screenIn(text));
}
