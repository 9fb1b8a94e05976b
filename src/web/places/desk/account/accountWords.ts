/** What a plan comes to, in words. */
import type { PricedThing } from '../../../../core/pan/kit.ts';
import type { Cost } from '../../../../core/planning/account/cost.ts';
import type { HardnessCheck } from '../../../../core/planning/account/waterCheck.ts';
import type { Account } from '../../../../core/planning/account.ts';
import type { PlanRequest } from '../../../../core/planning/request.ts';
import type { Range } from '../../../../core/twin/range.ts';
import { grams, percent, span } from '../../../parts/figures.ts';

const thingNames: Readonly<Record<PricedThing, string>> = {
  sugar: 'sugar',
  maltExtract: 'malt extract',
  alkali: 'alkali',
  acid: 'citric acid',
  energy: 'energy',
  bought: 'bought sugar',
};

/** In the user's own currency, that they never name. */
export function batchText({ batch, saved, unpriced }: Cost, bought: number | undefined): string {
  const made = `${unpriced.length > 0 ? 'at least ' : ''}${batch.toFixed(2)} for this batch`;
  if (saved === undefined || bought === undefined) return `${made}.`;
  const against = `${Math.abs(saved).toFixed(2)} ${saved < 0 ? 'more' : 'less'} than as much bought at ${bought.toFixed(2)} a kg`;
  return `${made}; ${against}.`;
}

/** Which prices are missing; nothing when none is, or none at all is typed. */
export function unpricedText({ unpriced }: Cost, bought: number | undefined): string | undefined {
  const missing = [...unpriced, ...(bought === undefined ? (['bought'] as const) : [])].map((each) => thingNames[each]);
  if (missing.length === 0) return undefined;
  const last = missing.pop() ?? '';
  return `No price typed for ${missing.length > 0 ? `${missing.join(', ')} and ${last}` : last}.`;
}

/** Of a slab as thick as wanted, out of as much sugar: `432 cm², 21 × 21 cm`. */
export function trayText(tray: NonNullable<Account['tray']>, wantedM = tray.thicknessM): string {
  const cm2 = (1e4 * tray.areaM2 * tray.thicknessM) / wantedM;
  const side = Math.sqrt(cm2).toFixed(0);
  return `${cm2.toFixed(0)} cm², ${side} × ${side} cm`;
}

/** Less than this can't be told apart in the kitchen: points inverted, and per cent of colour (assumed). */
const tellable = 1;

/** What distilled water would change of a plan. */
export function distilledText({ colourFactor, invertedMore }: Account['distilled']): string {
  const points = Math.round(100 * invertedMore);
  const colour = Math.round(100 * (colourFactor - 1));
  const counted = `${Math.abs(points)} ${Math.abs(points) === 1 ? 'point' : 'points'}`;
  const says = [
    ...(Math.abs(points) < tellable ? [] : [`invert ${counted} ${points > 0 ? 'more' : 'less'}`]),
    ...(Math.abs(colour) < tellable ? [] : [`land ${Math.abs(colour)} % ${colour > 0 ? 'darker' : 'paler'}`]),
  ];
  if (says.length === 0) return 'Distilled water would change nothing that could be told apart.';
  return `With distilled water this plan would ${says.join(' and ')}.`;
}

/** From here on nothing is left that is worth raising (assumed). */
const allInverted = 0.95;

/** How much is inverted at the end, in how wide a band once the draws are there, and what would raise it by the model. */
export function invertedText(
  inverted: number,
  band: Range | undefined,
  { route, maltExtractGPerKg }: Pick<PlanRequest, 'route' | 'maltExtractGPerKg'>,
  alkalinityMgPerL: number,
): string {
  const within = band ? `; 8 in 10 cooks end at ${span(band, (share) => (100 * share).toFixed(0))} %` : '';
  const says = `As planned, ${percent(inverted)} of the sugar is inverted at the end${within}.`;
  if (inverted >= allInverted) return says;
  const raising = [
    'a longer or hotter invert hold',
    ...(alkalinityMgPerL > 0 ? ['distilled water'] : []),
    ...(maltExtractGPerKg > 0 ? ['less malt extract'] : []),
    ...(route === 'pale' ? ['a pinch more acid'] : []),
  ];
  const last = raising.pop();
  return `${says} More comes of ${raising.length > 0 ? `${raising.join(', ')} or ` : ''}${last}.`;
}

/**
 * What is to say of the water's hardness: that it changes no plan, by how little, and what it is good to know for. What the alkali loses
 * to it for minutes lies within the spread of any plan's colour, whose 10-90 % range spans a factor of two and more.
 */
export function hardnessText(hardness: HardnessCheck | undefined): string {
  if (!hardness) return 'How hard it is changes nothing in this model.';
  const { mgPerL, calciumGPerKg, bindsAtMost, boilsOutMgPerL } = hardness;
  const binds =
    bindsAtMost > 0
      ? `it binds ${(100 * bindsAtMost).toFixed(1)} % of the alkali at most, until the syrup turns sour, which is less than the plan can tell`
      : 'no alkali is there for it to bind';
  return [
    `Its hardness, ${mgPerL.toFixed(0)} mg/L, changes nothing in this plan: ${binds}.`,
    `It leaves ${(1000 * calciumGPerKg).toFixed(0)} mg of calcium in a kg of sugar.`,
    `Boiled before and poured off its chalk, the water loses ${boilsOutMgPerL.toFixed(0)} mg/L of its alkalinity at most.`,
  ].join(' ');
}

/** What must stand ready when hard sugar is done, for the sheet on the wall; nothing of a syrup. */
export function readyText({ tray, bathKg }: Account): string {
  if (!tray || bathKg === undefined) return '';
  return `Tray ${trayText(tray)} at ${(1000 * tray.thicknessM).toFixed(0)} mm; cold bath ${grams(bathKg)} g.`;
}
