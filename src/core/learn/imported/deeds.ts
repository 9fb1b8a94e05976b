/** Deeds as a column of a table tells them: `heat 4`, `spoonfuls 2`, `water 30 g`, `alkali`, `step brown`, `poured`; several with semicolons. */
import type { Begun } from '../../log/bodies.ts';
import type { Deed } from '../../pan/steps.ts';

const deedForms = 'heat 4, spoonfuls 2, water 30 g, alkali, step brown, poured';

/** What deeds are read against, and how far the cook has come. */
export interface CookSoFar {
  readonly begun: Begun;
  readonly partsGiven: number;
}

/** The deed that a word tells of; a text says why it is none. */
export function deedOf(said: string, { begun, partsGiven }: CookSoFar): Deed | string {
  const [word = '', number, unit] = said.trim().toLowerCase().split(/\s+/);
  const value = number === undefined ? undefined : Number(number.replace(',', '.'));
  switch (word) {
    case 'heat': {
      const { notches } = begun.kit.stove;
      return value !== undefined && value >= 0 && value <= notches
        ? { kind: 'heat', notch: value }
        : `allowed: heat 0 to heat ${notches}`;
    }
    case 'spoonfuls':
      return value !== undefined && value > 0 && value <= 20
        ? { kind: 'water', waterKg: value * begun.kit.spoonM3 * 1000, spoonfuls: value }
        : 'allowed: spoonfuls 0.1 to spoonfuls 20';
    case 'water':
      return value !== undefined && value > 0 && value <= 2000 && unit === 'g'
        ? { kind: 'water', waterKg: value / 1000, spoonfuls: 0 }
        : 'allowed: water 1 g to water 2000 g';
    case 'alkali': {
      const part = begun.steps.flatMap(({ alkali }) => alkali)[partsGiven];
      return part ? { kind: 'alkali', part } : 'the plan has no further part of alkali';
    }
    case 'step': {
      const index = begun.steps.findIndex(({ kind }) => kind.toLowerCase() === number);
      return index >= 0
        ? { kind: 'step', index }
        : `allowed: step ${begun.steps.map(({ kind }) => kind).join(', step ')}`;
    }
    case 'poured':
      return { kind: 'pour' };
    default:
      return `allowed: ${deedForms}`;
  }
}
