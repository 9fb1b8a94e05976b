import { describe, expect, it, test } from 'vitest';
import { bareCook } from '../../../test/bareCook.ts';
import type { EventBodies, EventKind } from '../log/bodies.ts';
import { defaultKit } from '../pan/kit.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import type { Step } from '../pan/steps.ts';
import { atTheStart } from './progress.ts';
import { createRehearsal, type Rehearsal } from './rehearsal.ts';
import { revealOf } from './reveal.ts';
import { type SurpriseName, surpriseKinds, surpriseNames } from './surpriseKinds.ts';
import { createSurprises, drawSurprises } from './surprises.ts';
import { surpriseWords } from './surpriseWords.ts';

const prepared = prepareKit(defaultKit);
const charge = { sucroseKg: 0.4, waterKg: 0.08, maltExtractKg: 0.0032, citricAcidKg: 0 };
const part = { substance: 'sodiumHydroxide', alkaliKg: 0.0006, waterKg: 0.002 } as const;
const plain = { alkali: [], waitS: 0, approachNotch: 5, holdNotch: 2 } as const;
const steps: readonly Step[] = [
  { ...plain, kind: 'dissolve', bandC: [21, 106], end: { reachedC: 106 } },
  { ...plain, kind: 'invert', bandC: [112, 133], end: { heldMinutes: 8 } },
  { ...plain, kind: 'brown', bandC: [137, 143], end: { heldMinutes: 8 }, alkali: [part] },
  { ...plain, kind: 'roast', bandC: [152, 158], end: { heldMinutes: 2 } },
];

describe('drawn by a seed', () => {
  const seeds = Array.from({ length: 200 }, (_, seed) => seed);
  const all = seeds.map((seed) => drawSurprises(seed, steps));

  it('are the same for the same seed, one or two, and of every kind for many seeds', () => {
    expect(seeds.map((seed) => drawSurprises(seed, steps))).toEqual(all);
    expect(new Set(all.map(({ length }) => length))).toEqual(new Set([1, 2]));
    expect(new Set(all.flat().map(({ name }) => name))).toEqual(new Set(surpriseNames));
  });

  it('come in holds that are long enough, a minute or more after their start, no two of a kind or in one hold', () => {
    for (const { stepIndex, afterS } of all.flat()) {
      expect([1, 2]).toContain(stepIndex);
      expect(afterS).toBeGreaterThanOrEqual(60);
      expect(afterS).toBeLessThanOrEqual(6 * 60);
    }
    for (const drawn of all) {
      expect(new Set(drawn.map(({ name }) => name)).size).toBe(drawn.length);
      expect(new Set(drawn.map(({ stepIndex }) => stepIndex)).size).toBe(drawn.length);
    }
  });

  it('are none where no hold is long enough', () => {
    expect(drawSurprises(1, [steps[0], steps[3]])).toEqual([]);
  });
});

describe('at the thermometer', () => {
  /** A fault 90 s into the hold that began at 600 s, of which the last part of the alkali went in at 640 s. */
  function faultOf(name: SurpriseName) {
    let progress = { ...atTheStart, stepIndex: 2, inBandSinceS: 600 };
    const surprises = createSurprises([{ name, stepIndex: 2, afterS: 90, lastsS: 200 }], {
      ...{ steps, roomC: 20 },
      progress: () => progress,
    });
    return {
      surprises,
      give: () => {
        progress = { ...progress, partsGiven: 1, lastPartS: 640 };
      },
      isWrong: (timeS: number) => surprises.sends(140, timeS) !== 140,
    };
  }

  it('none comes before all alkali is in, and the hold has gone on for a while after it', () => {
    const { give, isWrong, surprises } = faultOf('inSteam');
    expect(isWrong(720)).toBe(false);
    give();
    expect([720, 730, 920, 930].map(isWrong)).toEqual([false, true, true, false]);
    expect(surprises.came).toMatchObject([{ name: 'inSteam', beganS: 730, untilS: 930 }]);
  });

  it.each<[string, SurpriseName, readonly [EventKind, object][], number]>([
    ['who sees its alarm puts it right', 'inSteam', [['seen', { alarm: 'probeDoubtful' }]], 780],
    ['who sees another alarm does not', 'inSteam', [['seen', { alarm: 'probeLost' }]], 930],
    [
      'who stands by a wrong thermometer leaves it wrong',
      'inSteam',
      [
        ['seen', { alarm: 'probeDoubtful' }],
        ['vouched', { probe: 'simulated' }],
      ],
      930,
    ],
    ['none is carried into the next step', 'inSteam', [['step', { index: 3 }]], 750],
    [
      'a unit that the cook goes by stays as it is',
      'otherUnit',
      [
        ['seen', { alarm: 'unitMixUp' }],
        ['probeUnit', { probe: 'simulated', unit: '[degF]', from: null }],
        ['step', { index: 3 }],
      ],
      Number.POSITIVE_INFINITY,
    ],
  ])('%s', (_, name, said, untilS) => {
    const { give, isWrong, surprises } = faultOf(name);
    give();
    isWrong(730);
    for (const [kind, body] of said) surprises.hear(kind, body as EventBodies[EventKind], 750);
    expect(surprises.came[0].untilS).toBe(untilS);
  });
});

it('a tip that falls out of the syrup after its unit was answered for is told in that unit', () => {
  const progress = { ...atTheStart, stepIndex: 1, inBandSinceS: 600 };
  const drawn = (['otherUnit', 'inSteam'] as const).map((name, i) => ({
    ...{ name, stepIndex: 1, afterS: 60 * (i + 1), lastsS: 200 },
  }));
  const surprises = createSurprises(drawn, { steps, roomC: 20, progress: () => progress });
  expect(surprises.sends(130, 660)).toBe(266);
  surprises.hear('probeUnit', { probe: 'simulated', unit: '[degF]', from: null }, 670);
  expect([720, 1000].map((timeS) => surprises.sends(130, timeS))).toEqual([212, 266]);
});

it.each(surpriseNames)(
  '%s: its alarm says so within a minute in a pan that is left to itself, and no other does',
  (name) => {
    let rehearsal: Rehearsal | undefined;
    const surprises = createSurprises([{ name, stepIndex: 1, afterS: 60, lastsS: 180 }], {
      ...{ steps, roomC: defaultKit.roomC },
      progress: () => rehearsal?.progress ?? atTheStart,
    });
    rehearsal = createRehearsal({ prepared, begun: bareCook(charge, steps, 3), members: 64, sends: surprises.sends });
    rehearsal.perform({ kind: 'heat', notch: 5 });
    while (rehearsal.twin.members[0].temperatureC < 106) rehearsal.moveTo(rehearsal.timeS + 10);
    rehearsal.perform({ kind: 'step', index: 1 });
    rehearsal.perform({ kind: 'heat', notch: 2 });
    while (surprises.came.length === 0) rehearsal.moveTo(rehearsal.timeS + 10);
    rehearsal.moveTo(rehearsal.timeS + 120);
    const [{ beganS }] = surprises.came;
    const sounded = rehearsal.cook.alarms.history.filter(({ what }) => what === 'sounded');
    console.log(sounded.map(({ alarm, timeS }) => `${alarm} after ${timeS - beganS} s`).join(', '));
    expect(beganS).toBeGreaterThan(300);
    expect(sounded.map(({ alarm }) => alarm)).toEqual([surpriseKinds[name].alarm]);
    expect(sounded[0].timeS - beganS).toBeLessThanOrEqual(60);
  },
  30_000,
);

test('until the first one comes, a rehearsal with surprises is the same as one without', () => {
  const run = (surprises: boolean) => {
    const begun = { ...bareCook(charge, steps, 5), rehearsal: { seed: 5, speed: 1, surprises } };
    const rehearsal = createRehearsal({ prepared, begun, members: 16 });
    rehearsal.perform({ kind: 'heat', notch: 5 });
    rehearsal.moveTo(300);
    const { surprises: revealed } = revealOf(rehearsal, defaultKit, charge);
    return { readings: rehearsal.cook.state.readings.map(({ body }) => body.valueC), revealed };
  };
  const [plainly, surprised] = [run(false), run(true)];
  expect(surprised.readings).toEqual(plainly.readings);
  expect([plainly.revealed, surprised.revealed]).toEqual([undefined, []]);
});

test('in words a surprise says when, what, which alarm said so, and until when', () => {
  const clock = (timeS: number) => `${timeS} s`;
  const surprise = { name: 'silent', beganS: 700, saidS: 730, rightS: 900 } as const;
  expect(surpriseWords(surprise, clock)).toBe(
    '700 s, the thermometer sent nothing: “Thermometer lost” said so after 30 s, right again at 900 s.',
  );
  expect(surpriseWords({ ...surprise, saidS: undefined, rightS: undefined }, clock)).toBe(
    '700 s, the thermometer sent nothing: no alarm said so, it stayed so.',
  );
});
