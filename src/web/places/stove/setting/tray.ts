/** The tray that the sugar was poured into: its size, and what it stands on. Remembered, because a kitchen uses the same one again. */
import type { Base } from '../../../../core/lot/slab.ts';
import { keep, kept } from '../../../parts/browserStorage.ts';

export interface Tray {
  readonly widthCm: number;
  readonly lengthCm: number;
  readonly base: Base;
}

export const sideCm = { least: 8, most: 60 } as const;

export const bases: readonly { readonly value: Base; readonly name: string; readonly says: string }[] = [
  { value: 'insulated', name: 'Board or folded cloth', says: 'keeps the heat in' },
  { value: 'tray', name: 'Metal tray, air below', says: 'on a rack or feet' },
  { value: 'rack', name: 'Foil or thin sheet on a wire rack', says: 'cools quickest' },
];

const key = 'umberpan.tray';
const usual: Tray = { widthCm: 20, lengthCm: 30, base: 'insulated' };

export function rememberedTray(): Tray {
  try {
    const { widthCm, lengthCm, base } = JSON.parse(kept(key) ?? 'null') as Tray;
    const known = bases.some(({ value }) => value === base) && [widthCm, lengthCm].every(isSide);
    return known ? { widthCm, lengthCm, base } : usual;
  } catch {
    return usual;
  }
}

export function rememberTray(tray: Tray): void {
  keep(key, JSON.stringify(tray));
}

function isSide(cm: number): boolean {
  return cm >= sideCm.least && cm <= sideCm.most;
}
