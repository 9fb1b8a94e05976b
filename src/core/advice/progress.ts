/** Where a cook stands in its steps: which one, how long held, in minutes that count. */
import type { Deed, Step } from '../pan/steps.ts';

/** Activation energies that weigh a minute, kJ/mol: inversion (Tombari 2007) and pigment (assumed; see reactions/parameters.ts). */
const weighingKJ: Partial<Record<Step['kind'], number>> = { invert: 109, brown: 92, roast: 92 };

/** Below this share of its middle speed a minute does not count at all, so that a pan left cold is not "held". */
const least = 0.02;

/**
 * How much of a minute at the middle of the band a minute at this temperature is worth (Arrhenius), so that a dip is made up for.
 *
 * @param kind the step; steps without a hold count nothing
 */
export function minuteWorth(kind: Step['kind'], temperatureC: number, middleC: number): number {
  const energy = weighingKJ[kind];
  if (energy === undefined) return 0;
  const worth = Math.exp(((energy * 1000) / 8.314462618) * (1 / (middleC + 273.15) - 1 / (temperatureC + 273.15)));
  return worth < least ? 0 : worth;
}

export interface Progress {
  readonly stepIndex: number;
  readonly stepBegunS: number;
  /** Has the thermometer shown the band's lower edge in this step? */
  readonly inBandSinceS: number | undefined;
  /** Equivalent minutes of the hold so far. */
  readonly heldMinutes: number;
  readonly partsGiven: number;
  readonly lastPartS: number;
  /** When the dial was last turned, from which setting and to which; and when water last went in; s. */
  readonly turnedS: number;
  readonly turnedFrom: number;
  readonly notch: number;
  readonly wateredS: number;
  readonly poured: boolean;
}

export const atTheStart: Progress = {
  stepIndex: 0,
  stepBegunS: 0,
  inBandSinceS: undefined,
  heldMinutes: 0,
  partsGiven: 0,
  lastPartS: Number.NEGATIVE_INFINITY,
  turnedS: Number.NEGATIVE_INFINITY,
  turnedFrom: 0,
  notch: 0,
  wateredS: Number.NEGATIVE_INFINITY,
  poured: false,
};

/** Goes on with a stretch of time at a temperature. */
export function progressed(p: Progress, step: Step, timeS: number, elapsedS: number, temperatureC: number): Progress {
  const inBandSinceS = p.inBandSinceS ?? (temperatureC >= step.bandC[0] ? timeS : undefined);
  const middleC = (step.bandC[0] + step.bandC[1]) / 2;
  const worth = inBandSinceS === undefined ? 0 : minuteWorth(step.kind, temperatureC, middleC);
  return { ...p, inBandSinceS, heldMinutes: p.heldMinutes + (worth * elapsedS) / 60 };
}

/** Where it stands once a deed is done. */
export function afterDeed(p: Progress, deed: Deed, timeS: number): Progress {
  const { poured, turnedS, turnedFrom, notch, wateredS, partsGiven, lastPartS } = p;
  switch (deed.kind) {
    case 'heat':
      return deed.notch === notch
        ? { ...p, turnedS: timeS }
        : { ...p, turnedS: timeS, turnedFrom: notch, notch: deed.notch };
    case 'alkali':
      return { ...p, partsGiven: partsGiven + 1, lastPartS: timeS };
    case 'step': {
      // Told twice it was begun once: what was held so far stays held.
      if (deed.index === p.stepIndex) return p;
      // Parts of alkali count over the whole cook: a step that is begun again must not ask for them again.
      const kept = { poured, turnedS, turnedFrom, notch, wateredS, partsGiven, lastPartS };
      return { ...atTheStart, ...kept, stepIndex: deed.index, stepBegunS: timeS };
    }
    case 'pour':
      return { ...p, poured: true };
    case 'water':
      return { ...p, wateredS: timeS };
  }
}

/** Has the heat ever been turned on? */
export function isBegun({ turnedS }: Progress): boolean {
  return turnedS > Number.NEGATIVE_INFINITY;
}

/** Is the pan still on its way to a band, or in a step that only leads to one? */
export function isApproaching(p: Progress, step: Step): boolean {
  return p.inBandSinceS === undefined || 'reachedC' in step.end;
}

/** Has the step done what it is for? `temperatureC` as the twin believes it, `solids` in letting down. */
export function isOver(p: Progress, step: Step, temperatureC: number, solids: number): boolean {
  if (step.letDown) return solids <= step.letDown.solids;
  if (p.partsGiven < step.alkali.length) return false;
  return 'reachedC' in step.end ? temperatureC >= step.end.reachedC : p.heldMinutes >= step.end.heldMinutes;
}
