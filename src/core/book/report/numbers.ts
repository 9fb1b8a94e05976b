/** Numbers as a report writes them. */
import type { Range } from '../../twin/range.ts';

export const span = ({ low, high }: Range, scale: number, digits = 0): string =>
  `${(low * scale).toFixed(digits)} to ${(high * scale).toFixed(digits)}`;

export const grams = (kg: number): string => `${(kg * 1000).toFixed(kg < 0.01 ? 2 : kg < 0.1 ? 1 : 0)} g`;
