/** The one error of this folder: an entry that can't be taken as the quantity asked for, and what would be. */
import { type Dimension, dimensions } from './dimension.ts';

export class QuantityError extends Error {
  override readonly name = 'QuantityError';
  readonly given: string;
  readonly dimension: Dimension;
  readonly trouble: string;
  /** Whether it was understood, and no such quantity can be; otherwise it was not understood. */
  readonly impossible: boolean;

  /** @param trouble what is wrong with it, such as `is not understood` */
  constructor(given: string, dimension: Dimension, trouble: string, { impossible = false } = {}) {
    const { label, example } = dimensions[dimension];
    super(`${label}: '${given}' ${trouble}; write ${example}`);
    this.given = given;
    this.dimension = dimension;
    this.trouble = trouble;
    this.impossible = impossible;
  }
}
