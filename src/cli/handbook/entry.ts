/** An entry of the handbook: a property as data, and the function that answers for it. */
import type { Mark } from '../../core/reactions/parameter.ts';
import { type Given, type Inputs, readAll, type Texts } from '../input.ts';
import { Stop } from '../stop.ts';
import type { Ranged } from './range.ts';

export interface Answer extends Ranged {
  /** Where the unit depends on what was asked. */
  readonly unit?: string;
  readonly mark?: Mark;
  readonly source?: string;
  readonly note?: string | undefined;
  /** Further results; each name tells its unit. */
  readonly further?: Readonly<Record<string, unknown>>;
}

interface Facts {
  readonly name: string;
  /** One line. */
  readonly meaning: string;
  /** UCUM code of the value. */
  readonly unit: string;
  readonly valid: string;
  readonly source: string;
  readonly mark: Mark;
  /** Options of a first example. */
  readonly example: string;
}

export interface Entry extends Facts {
  readonly inputs: Inputs;
  readonly answer: (texts: Texts) => Promise<Answer>;
}

/** Binds the inputs of an entry to what its function takes. A property asked for outside its range becomes a refusal that names it. */
export function entry<const I extends Inputs>(
  facts: Facts & { readonly inputs: I; readonly compute: (given: Given<I>) => Answer | Promise<Answer> },
): Entry {
  const { compute, ...entryFacts } = facts;
  return {
    ...entryFacts,
    answer: async (texts) => {
      const given = readAll(facts.inputs, texts);
      try {
        return await compute(given);
      } catch (error) {
        if (!(error instanceof RangeError)) throw error;
        const trouble = error.message.replace(/\d+\.\d{4,}/g, (digits) =>
          String(Number(Number(digits).toPrecision(5))),
        );
        const message = `${facts.name} is known for ${facts.valid}: ${trouble}`;
        throw new Stop({ kind: 'outsideRange', field: facts.name, allowed: facts.valid, message });
      }
    },
  };
}
