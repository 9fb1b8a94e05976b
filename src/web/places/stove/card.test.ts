import { describe, expect, it } from 'vitest';
import type { Advice } from '../../../core/advice/advise.ts';
import type { OpenDeeds } from '../../../core/advice/openDeeds.ts';
import { atTheStart } from '../../../core/advice/progress.ts';
import { defaultKit } from '../../../core/pan/kit.ts';
import type { AlkaliPart, Deed, Step } from '../../../core/pan/steps.ts';
import { cardOf } from './card.ts';
import { closedWords } from './closedWords.ts';
import type { Ahead, View } from './view.ts';

const part: AlkaliPart = { substance: 'sodiumHydroxide', alkaliKg: 0.0005, waterKg: 0.002 };
const plain = { waitS: 30, approachNotch: 4, holdNotch: 2 } as const;
const steps: Step[] = [
  { ...plain, kind: 'brown', bandC: [137, 143], end: { heldMinutes: 25 }, alkali: [part, part] },
  { ...plain, kind: 'roast', bandC: [152, 158], end: { heldMinutes: 7 }, alkali: [] },
];
const likely = (mid: number) => ({ low: mid - 1, mid, high: mid + 1 });
const closed = { open: false, because: 'nothing due' } as const;
const open = Object.fromEntries(
  ['spoonful', 'half', 'portion', 'lower', 'raise', 'off', 'alkali', 'step', 'pour'].map((name) => [name, closed]),
) as OpenDeeds;

function card(kind: Advice['kind'], deeds: readonly Deed[], believed: number, more: Partial<View> = {}) {
  const advice: Advice = {
    kind,
    deeds,
    urgency: 'act soon',
    expectedC: likely(140),
    leavesBand: 0.3,
    minutesLeft: 12.4,
  };
  const progress = { ...atTheStart, inBandSinceS: 900, partsGiven: 2 };
  const view = {
    timeS: 1000,
    begun: true,
    readingC: believed,
    readingAtS: 1000,
    believedC: likely(believed),
    trendCPerMin: 1,
    notch: 3,
    progress,
    advice,
    aside: false,
    open,
    ...more,
  } as View;
  const ahead: Ahead = {
    fromS: 1000,
    everyS: 30,
    temperatureC: Array.from({ length: 11 }, (_, i) => likely(142 + i)),
    arrival: undefined,
  };
  const { stepIndex, partsGiven } = view.progress;
  return cardOf(view, { kit: defaultKit, steps, notch: view.notch, partsGiven, stepIndex }, ahead, 'C');
}

describe('a card', () => {
  it('asks anew each two minutes for a reading that does not come', () => {
    const keyAt = (timeS: number) => card('read', [], 140, { timeS, lastReadS: 1000 }).key;
    expect(keyAt(1239)).toBe(keyAt(1121));
    expect(keyAt(1241)).not.toBe(keyAt(1239));
    expect(card('read', [], 140, { lastReadS: 800 }).title).toBe('Read the thermometer by hand');
  });

  it('says what to do, what happens if nothing is done, and what the deed will do', () => {
    const spoon = card('steer', [{ kind: 'water', waterKg: 0.005, spoonfuls: 1 }], 142);
    expect(spoon.title).toBe('One teaspoon of cold water');
    expect(spoon.reason).toBe('Left alone it leaves the band of 137–143 °C upwards: 148 °C in 3 min.');
    expect(spoon.effect).toBe('142 → 140 °C in 3 min');
    expect(spoon.caution).toMatch(/flashes to steam/);
  });

  it('names two deeds as one act', () => {
    const both = card(
      'steer',
      [
        { kind: 'water', waterKg: 0.0025, spoonfuls: 0.5 },
        { kind: 'heat', notch: 2 },
      ],
      142,
    );
    expect(both.title).toBe('Half a teaspoon of cold water, then dial down to 2');
  });

  it('weighs a part of alkali as solution, and says how it goes in', () => {
    const given = card('alkali', [{ kind: 'alkali', part }], 128, { progress: { ...atTheStart, partsGiven: 1 } });
    expect(given.title).toBe('Alkali, part 2 of 2');
    expect(given.caution).toMatch(/^2.50 g of the solution, slowly/);
  });

  it('while alkali is too hot to add says so, and asks for nothing', () => {
    const hot = { ...open, alkali: { open: false, because: 'alkali heat' } } as OpenDeeds;
    const wait = card('wait', [], 137, { open: hot, progress: atTheStart });
    expect(wait.title).toBe('Wait for the next part of alkali');
    expect(wait.reason).toMatch(/^First below 135 °C/);
    expect(wait.deeds).toEqual([]);
  });

  it('near the roast limit speaks of the heat alone, and can’t be put aside', () => {
    const off = card('off the heat', [{ kind: 'heat', notch: 0 }], 161, {
      progress: { ...atTheStart, stepIndex: 1, inBandSinceS: 900 },
    });
    const said = [off.title, off.reason, off.effect, off.caution].join(' ');
    expect(said).toMatch(/Off the heat/);
    expect(said).not.toMatch(/water|spoon|stir|alkali/i);
    expect(off.canWait).toBe(false);
  });
});

it('a deed that is closed says why, in the unit in use', () => {
  expect(closedWords({ open: false, because: 'alkali heat' }, 'F')).toBe('not above 275 °F: it would be thrown out');
  expect(closedWords({ open: false, because: 'roast limit' }, 'C')).toBe('above 162 °C: off the heat only');
});
