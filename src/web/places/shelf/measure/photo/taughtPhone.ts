/** Dilutions of known colour that this device's camera has seen. Kept on the device, because they tell of its camera alone. */
import { useSyncExternalStore } from 'react';
import type { Standard } from '../../../../../core/colour/photo/photoColour.ts';
import { channels, type LightKind, lightKinds, type PerChannel } from '../../../../../core/colour/photo/viewer.ts';
import { keep, kept } from '../../../../parts/browserStorage.ts';
import { heldValue } from '../../../../parts/heldValue.ts';

export interface TaughtDilution extends Standard {
  readonly id: string;
  readonly at: string;
  readonly light: LightKind;
  /** Name of the lot, to find it again in the list. */
  readonly of: string;
}

const key = 'umberpan.phone';
/** The latest of each light that a picture is read by; more of them hardly narrow it, and take time. */
const mostUsed = 6;
const mostKept = 30;
const held = heldValue(taughtIn(kept(key)));

/** What a stored text holds; what is not understood is left out. */
export function taughtIn(text: string | null): readonly TaughtDilution[] {
  try {
    const stored: unknown = JSON.parse(text ?? '[]');
    return Array.isArray(stored) ? stored.filter(isTaught) : [];
  } catch {
    return [];
  }
}

function isTaught(one: Partial<TaughtDilution> | null): one is TaughtDilution {
  return (
    typeof one?.id === 'string' &&
    typeof one.of === 'string' &&
    !Number.isNaN(Date.parse(one.at ?? '')) &&
    lightKinds.some((kind) => kind === one.light) &&
    isPositive(one.a430Path) &&
    isPositive(one.knownWithin) &&
    isPerChannel(one.absorbance) &&
    isPerChannel(one.sd)
  );
}

const isPositive = (value: unknown): boolean => typeof value === 'number' && value > 0 && Number.isFinite(value);

function isPerChannel(value: PerChannel | undefined): boolean {
  return channels.every((channel) => Number.isFinite(value?.[channel]));
}

export function useTaughtPhone(): readonly TaughtDilution[] {
  return useSyncExternalStore(held.subscribe, held.now);
}

/** Of these, the latest ones of a light. */
export function usedIn(light: LightKind, all: readonly TaughtDilution[]): readonly TaughtDilution[] {
  return all.filter((one) => one.light === light).slice(-mostUsed);
}

export function teachPhone(one: TaughtDilution): void {
  become([...held.now(), one].slice(-mostKept));
}

export function forgetTaught(id: string): void {
  become(held.now().filter((one) => one.id !== id));
}

function become(all: readonly TaughtDilution[]): void {
  keep(key, JSON.stringify(all));
  held.become(all);
}
