/** The steps of a cook and what goes into the pan: what a plan hands to the simulation. */

export type StepKind = 'dissolve' | 'climb' | 'invert' | 'brown' | 'roast' | 'cast' | 'letDown';

/** What the pan is filled with at the start, kg. */
export interface Charge {
  readonly sucroseKg: number;
  readonly waterKg: number;
  readonly maltExtractKg: number;
  readonly citricAcidKg: number;
}

/** One part of the alkali, given at once. */
export interface AlkaliPart {
  readonly substance: 'sodiumHydroxide' | 'calciumHydroxide';
  /** Pure alkali, kg. */
  readonly alkaliKg: number;
  /** Water that it is dissolved or slurried in, kg. */
  readonly waterKg: number;
}

export interface Step {
  readonly kind: StepKind;
  /** Temperatures to stay between, as the thermometer shows them, C. */
  readonly bandC: readonly [number, number];
  /** The step ends when the thermometer shows `reachedC`, or `heldMinutes` after it first showed the band's lower edge. */
  readonly end: { readonly reachedC: number } | { readonly heldMinutes: number };
  /** Dial settings: on the way to the band, and in it. */
  readonly approachNotch: number;
  readonly holdNotch: number;
  readonly alkali: readonly AlkaliPart[];
  /** Least time between two parts of alkali or of water, s. */
  readonly waitS: number;
  /** Letting down: the solids wanted, and the water of one portion while hot (above 120 C) and when cooler, kg. */
  readonly letDown?: { readonly solids: number; readonly hotPortionKg: number; readonly coolPortionKg: number };
}

export type Deed =
  | { readonly kind: 'heat'; readonly notch: number }
  | { readonly kind: 'water'; readonly waterKg: number; readonly spoonfuls: number }
  | { readonly kind: 'alkali'; readonly part: AlkaliPart }
  | { readonly kind: 'step'; readonly index: number }
  | { readonly kind: 'pour' };

export interface TimedDeed {
  readonly timeS: number;
  readonly deed: Deed;
}
