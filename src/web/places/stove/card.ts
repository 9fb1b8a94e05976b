/** One piece of advice as a card: what to do, why, what it will do, and how urgent it is. */
import { readByHandEveryS, type Urgency } from '../../../core/advice/advise.ts';
import { limits } from '../../../core/advice/limits.ts';
import type { Deed, Step } from '../../../core/pan/steps.ts';
import { grams } from '../../parts/figures.ts';
import { stepNames } from '../../parts/stepNames.ts';
import { degrees, inUnit, type TemperatureUnit } from '../../parts/temperature.ts';
import { type Cook, deedWords } from './deedWords.ts';
import type { Ahead, View } from './view.ts';

export interface Card {
  /** The same for as long as the same is asked. */
  readonly key: string;
  readonly urgency: Urgency;
  readonly title: string;
  readonly reason: string;
  readonly effect: string | undefined;
  readonly likely: string | undefined;
  readonly caution: string | undefined;
  readonly deeds: readonly Deed[];
  /** May it be put aside? */
  readonly canWait: boolean;
}

/** The end of the core's outlook is this far off, min. */
const outlookMinutes = 3;

export function cardOf(view: View, cook: Cook, ahead: Ahead | undefined, unit: TemperatureUnit): Card {
  const { advice, believedC, begun } = view;
  const { deeds, urgency } = advice;
  const title = titleOf(view, cook, unit);
  const [low, mid, high] = [advice.expectedC.low, advice.expectedC.mid, advice.expectedC.high].map((c) =>
    inUnit(c, unit).toFixed(0),
  );
  const steered = advice.kind === 'steer' || advice.kind === 'wait' || advice.kind === 'cool first';
  const effect = `${inUnit(believedC.mid, unit).toFixed(0)} → ${mid} °${unit} in ${outlookMinutes} min`;
  const told = steered && begun;
  return {
    key: `${advice.kind}${advice.kind === 'read' ? turnOfReading(view) : ''} ${JSON.stringify(deeds)} ${cook.stepIndex} ${cook.partsGiven}`,
    urgency,
    title,
    reason: begun ? reasonOf(view, cook, ahead, unit) : 'The pan is filled and cold. The first deed starts the clock.',
    effect: told ? effect : undefined,
    likely: told ? `8 in 10: ${low}–${high}` : undefined,
    caution: cautionOf(deeds, view),
    deeds,
    canWait: begun && advice.kind !== 'off the heat' && advice.kind !== 'foam',
  };
}

function titleOf({ advice, notch, progress }: View, cook: Cook, unit: TemperatureUnit): string {
  if (advice.kind === 'off the heat') return notch > 0 ? 'Off the heat: dial to 0' : 'Off the heat, and wait';
  if (advice.kind === 'foam') return notch > 0 ? 'Off the heat: foam rises' : 'Stir, and add nothing';
  if (advice.kind === 'read') return 'Read the thermometer by hand';
  if (advice.kind === 'blind') return 'No more heat: read by hand';
  if (advice.deeds.length > 0) {
    const [first = '', ...more] = advice.deeds.map((deed) => deedWords(deed, cook));
    return [first, ...more.map((words) => words.toLowerCase())].join(', then ');
  }
  const step = cook.steps[cook.stepIndex];
  if (step && cook.partsGiven < step.alkali.length) return 'Wait for the next part of alkali';
  const { inBandSinceS } = progress;
  if (step && 'heldMinutes' in step.end && !step.letDown && inBandSinceS === undefined)
    return `Go on to ${degrees(step.bandC[0], unit)}`;
  if (advice.minutesLeft !== undefined && advice.minutesLeft > 0 && !step?.letDown && step)
    return `Hold ${Math.ceil(advice.minutesLeft)} min more`;
  return step && 'reachedC' in step.end ? `Go on to ${degrees(step.end.reachedC, unit)}` : 'Go on';
}

/** Which time it is asked for since the last one came: each time is new, and told. */
function turnOfReading({ timeS, lastReadS }: View): number {
  return Math.floor((timeS - lastReadS) / readByHandEveryS);
}

function reasonOf(view: View, cook: Cook, ahead: Ahead | undefined, unit: TemperatureUnit): string {
  const { advice, progress } = view;
  const step = cook.steps[cook.stepIndex];
  if (!step) return '';
  switch (advice.kind) {
    case 'off the heat':
      return `It nears ${degrees(limits.roastTemperature.value, unit)}; above that sugar smokes. Heat off, and in a kitchen the pan aside.`;
    case 'foam':
      return 'You said that foam rises. Say at the alarm when it is quiet again.';
    case 'read':
      return 'Nothing has been heard of it for two minutes or more: until it is, the model stands alone. Type what it shows.';
    case 'blind':
      return 'No reading can be believed now, so nothing hotter is advised.';
    case 'alkali': {
      const below = `Off the heat and below ${degrees(limits.alkaliTemperature.value, unit)}`;
      return cook.partsGiven > 0 ? `${below}; the last part has had its ${step.waitS} s.` : `${below}.`;
    }
    case 'cool first':
      return step.letDown ? 'Water for letting down goes in off the heat.' : 'Alkali goes in off the heat: it foams.';
    case 'next step':
    case 'pour':
      return 'reachedC' in step.end
        ? `It has reached ${degrees(step.end.reachedC, unit)}.`
        : step.letDown
          ? 'The syrup is as thin as planned.'
          : `${stepNames[step.kind]} is done: ${progress.heldMinutes.toFixed(0)} min that count.`;
    case 'wait':
      return waitReason(view, cook, step, unit);
    case 'steer':
      return step.letDown ? 'The next portion of letting down.' : steerReason(view, step, ahead, unit);
  }
}

function waitReason(view: View, cook: Cook, step: Step, unit: TemperatureUnit): string {
  const { open, believedC } = view;
  if (cook.partsGiven < step.alkali.length && !open.alkali.open) {
    const { because, waitS = 0 } = open.alkali;
    return because === 'alkali heat'
      ? `First below ${degrees(limits.alkaliTemperature.value, unit)}: ${limits.alkaliTemperature.reason}.`
      : `${Math.max(0, Math.ceil(waitS))} s more between two parts.`;
  }
  if ('reachedC' in step.end) return standsStill(view) ? 'It stands still at this dial.' : 'On its way.';
  if (believedC.mid < step.bandC[0]) return `On its way to the band of ${bandWords(step, unit)}.`;
  return 'Going on as it is does best just now.';
}

function standsStill({ advice, believedC }: View): boolean {
  return advice.expectedC.mid < believedC.mid + 0.7;
}

/** Where it goes if nothing is done: that is what a deed is for. */
function steerReason(view: View, step: Step, ahead: Ahead | undefined, unit: TemperatureUnit): string {
  const { believedC, progress } = view;
  const [low, high] = step.bandC;
  const soon = ahead?.temperatureC[Math.round((outlookMinutes * 60) / ahead.everyS)]?.mid ?? believedC.mid;
  const left = `${degrees(soon, unit)} in ${outlookMinutes} min`;
  const band = bandWords(step, unit);
  if ('reachedC' in step.end) return `Left alone: ${left}, on the way to ${degrees(step.end.reachedC, unit)}.`;
  const approaching = progress.inBandSinceS === undefined;
  if (believedC.mid > high) return `Above the band of ${band}. Left alone: ${left}.`;
  if (believedC.mid < low && !approaching) return `Below the band of ${band}. Left alone: ${left}.`;
  if (soon > high)
    return `Left alone it ${approaching ? `overshoots the band of ${band}` : `leaves the band of ${band} upwards`}: ${left}.`;
  if (approaching) return `On the way to the band of ${band}. Left alone: ${left}.`;
  if (soon < low) return `Left alone it leaves the band of ${band} downwards: ${left}.`;
  return `Left alone it nears the edge of the band of ${band}: ${left}.`;
}

export function bandWords({ bandC: [low, high] }: Step, unit: TemperatureUnit): string {
  return `${inUnit(low, unit).toFixed(0)}–${inUnit(high, unit).toFixed(0)} °${unit}`;
}

function cautionOf(deeds: readonly Deed[], { believedC }: View): string | undefined {
  const kinds = deeds.map(({ kind }) => kind);
  const alkali = deeds.find((deed) => deed.kind === 'alkali');
  if (alkali?.kind === 'alkali')
    return `${grams(alkali.part.alkaliKg + alkali.part.waterKg)} g of the solution, slowly down the side, goggles on, face away. It foams.`;
  if (kinds.includes('water') && believedC.high > limits.portionHotFrom.value)
    return 'Down the side, face away: it flashes to steam.';
  if (kinds.includes('pour')) return 'Dry mitts, a clear way to the tray, children and pets out of the kitchen.';
  return undefined;
}
