/** The checks of the command line: how each is named, what it is given, and what it is asked of the core. */
import type { CheckEntry } from '../../core/learn/checks/check.ts';
import type { HeatingRun } from '../../core/learn/checks/waterPan.ts';
import type { Kit } from '../../core/pan/kit.ts';
import { type Given, type Input, type Inputs, number, optional, quantity, usually } from '../input.ts';
import { misused } from '../stop.ts';
import { listOf, pairsOf } from './lists.ts';

export interface CheckInput {
  readonly name: string;
  readonly meaning: string;
  readonly inputs: Inputs;
  readonly example: string;
  readonly entryOf: (given: Given<Inputs>, kit: Kit) => CheckEntry;
}

function check<I extends Inputs>(one: {
  readonly name: string;
  readonly meaning: string;
  readonly inputs: I;
  readonly example: string;
  readonly entryOf: (given: Given<I>, kit: Kit) => CheckEntry;
}): CheckInput {
  return one as unknown as CheckInput;
}

const shownC = [-20, 130] as const;
const temperature = quantity('temperature', 'a reading', 'C', shownC);
const readings = listOf(
  'readings of the thermometer, parted by commas: 100.4,100.6 or 212.7F,213F',
  bare(temperature, 'C'),
);
const resolution = usually(number('smallest step that it shows', [0.01, 5], 'C'), '0.1');
const timed = pairsOf(
  'readings with their times, parted by commas: 20s:31.5,40s:36',
  bare(quantity('duration', 'a time', 's', [0, 7200]), 's'),
  bare(temperature, 'C'),
);
const water = {
  water: quantity('mass', 'water in the pan', 'g', [0.1, 10]),
  start: quantity('temperature', 'the water at the start', 'C', [0, 60]),
  settings: pairsOf(
    'settings of the dial with their times: 0s:6,420s:0',
    bare(quantity('duration', 'a time', 's', [0, 7200]), 's'),
    number('a setting', [0, 20]),
  ),
  readings: timed,
};

export const checkInputs: readonly CheckInput[] = [
  check({
    name: 'boiling-water',
    meaning: 'what the thermometer shows above the truth, by water at a full boil',
    inputs: {
      readings,
      pressure: optional(
        quantity('pressure', 'by a barometer, here and now', 'hPa', [60_000, 108_000]),
        "the kit's altitude",
      ),
      resolution,
    },
    example: '--readings 100.4,100.6,100.5 --pressure 985hPa',
    entryOf: ({ readings: readingsC, pressure, resolution: resolutionC }, { altitudeM }) => ({
      ...{ kind: 'boilingWater', readingsC, resolutionC },
      air: pressure === undefined ? { altitudeM } : { pressurePa: pressure },
    }),
  }),
  check({
    name: 'ice',
    meaning: 'the same by melting ice',
    inputs: { readings, resolution },
    example: '--readings 0.3,0.2,0.3',
    entryOf: ({ readings: readingsC, resolution: resolutionC }) => ({ kind: 'ice', readingsC, resolutionC }),
  }),
  check({
    name: 'lag',
    meaning: 'how fast the thermometer follows, plunged from one temperature into another',
    inputs: { from: quantity('temperature', 'what it showed before', 'C', shownC), readings: timed },
    example: '--from 21C --readings 1s:34,2s:45,4s:62,6s:74,10s:88,15s:95,60s:99.8',
    entryOf: ({ from, readings: pairs }) => ({
      ...{ kind: 'lag', fromC: from },
      samples: pairs.map(([timeS, valueC]) => ({ timeS, valueC })),
    }),
  }),
  check({
    name: 'spoons',
    meaning: 'how much water a spoonful brings, by weighing some',
    inputs: {
      weights: listOf(
        'spoonfuls of water, parted by commas: 4.6g,5.1g',
        bare(quantity('mass', 'a spoonful', 'g', [1e-4, 0.1]), 'g'),
      ),
    },
    example: '--weights 4.6g,5.1g,4.4g,4.9g,4.2g,5.0g,4.8g,4.5g,4.7g,5.2g',
    entryOf: ({ weights }) => ({ kind: 'spoons', spoonfulsKg: weights }),
  }),
  check({
    name: 'heating',
    meaning: 'power, lag and loss of stove and pan, by heating water and letting it cool',
    inputs: water,
    example: '--water 1kg --start 15C --settings 0s:6,420s:0 --readings 30s:16,60s:18,...',
    entryOf: (given, kit) => ({ kind: 'heating', runs: [runOf(given, kit)] }),
  }),
];

function runOf({ water: waterKg, start, settings, readings: pairs }: Given<typeof water>, kit: Kit): HeatingRun {
  const highest = Math.max(...settings.map(([, notch]) => notch));
  if (highest > kit.stove.notches) {
    misused('--settings', String(highest), 'is beyond the dial', `0 to ${kit.stove.notches}`);
  }
  return {
    ...{ waterKg, startC: start },
    settings: settings.map(([timeS, notch]) => ({ timeS, notch })),
    readings: pairs.map(([timeS, valueC]) => ({ timeS, valueC })),
  };
}

/** The same, of which the unit may be left out. */
function bare(input: Input<number>, unit: string): Input<number> {
  return { ...input, read: (text, flag) => input.read(/^[-+\d.,]+$/.test(text) ? `${text}${unit}` : text, flag) };
}
