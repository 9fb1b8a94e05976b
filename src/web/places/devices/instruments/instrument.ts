/** A thermometer that the page itself listens to. */
import type { ReadingUnit } from '../../../../core/log/bodies.ts';

export interface Shown {
  readonly raw: number | string | null;
  readonly unit: ReadingUnit;
}

export interface Instrument {
  readonly name: string;
  /** Tells each value until the function returned is called; when it breaks, it is tried again. */
  listen(told: (shown: Shown) => void, lost: (reason: string) => void): () => void;
}
