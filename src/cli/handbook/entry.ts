/** An entry of the handbook: a property as data, and the function that answers for it. */
import type { Mark } from '../../core/reactions/parameter.ts';
import { flagOf, type Given, type Inputs, readAll, type Texts } from '../input.ts';
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
  /** How a person reads a further result, where a bare number would not do; nothing where another line says it. */
  readonly inWords?: Readonly<Record<string, string | undefined>>;
}

/** Thrown when an option is beyond a limit that hangs on the other options. */
export class Beyond extends Error {
  override readonly name = 'Beyond';
  readonly input: string;
  readonly allowed: string;

  constructor(input: string, allowed: string) {
    super(`${input}; allowed: ${allowed}`);
    this.input = input;
    this.allowed = allowed;
  }
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
        if (error instanceof Beyond) throw stopFor(error, texts, facts.inputs);
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

function stopFor({ input, allowed }: Beyond, texts: Texts, inputs: Inputs): Stop {
  const field = flagOf(input);
  const value = String(texts[input] ?? inputs[input]?.usual);
  const message = `${field}: '${value}' is outside the range; allowed: ${allowed}`;
  return new Stop({ kind: 'outsideRange', field, value, allowed, message });
}
