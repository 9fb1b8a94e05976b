/** Entries of a log in words, as they are read in a table: numbers with their units, temperatures in degrees Celsius. */

import { ebcFromA430 } from '../colour/scales.ts';
import type { AnyEntry } from '../log/corrections.ts';
import type { CookState } from '../log/fold.ts';
import type { Step } from '../pan/steps.ts';
import { stepWords } from './words.ts';

/** All that was read, done, measured and said, in the order of time. */
export function entriesOf(state: CookState): readonly AnyEntry[] {
  const { readings, deeds, measurements, remarks, answers, probeUnits, seen, putAside, ended } = state;
  const all: readonly AnyEntry[] = [
    ...readings,
    ...deeds,
    ...measurements,
    ...remarks,
    ...answers,
    ...probeUnits,
    ...seen,
    ...putAside,
    ...(ended ? [ended] : []),
  ];
  return all.toSorted((a, b) => a.trueMs - b.trueMs);
}

/** @param steps of the cook, for their names */
export function entryText(entry: AnyEntry, steps: readonly Step[]): string {
  switch (entry.kind) {
    case 'heat':
      return entry.body.notch === 0 ? 'Off the heat' : `Dial ${entry.body.notch}`;
    case 'water': {
      const { waterKg, spoonfuls } = entry.body;
      return spoonfuls > 0
        ? `${spoonfuls} spoonful${spoonfuls === 1 ? '' : 's'} of cold water`
        : `${grams(waterKg)} g of hot water`;
    }
    case 'alkali':
      return `Alkali, part ${entry.body.part}: ${grams(entry.body.alkaliKg)} g in ${grams(entry.body.waterKg)} g of water`;
    case 'stir':
      return 'Stirred';
    case 'spoonTest': {
      const { a430, behaviour, taste } = entry.body;
      const said = [
        ...(a430 === null ? [] : [`${ebcFromA430(a430).toFixed(0)} EBC`]),
        ...(behaviour ? [behaviour] : []),
        ...taste,
      ];
      return `Spoon test: ${said.join(', ')}`;
    }
    case 'step':
      return `Begun: ${stepWords[steps[entry.body.index]?.kind ?? 'cast'].toLowerCase()}`;
    case 'poured':
      return 'Poured';
    case 'reading':
      return entry.body.valueC === null ? 'No reading' : `${entry.body.valueC.toFixed(1)} °C`;
    case 'foam':
      return entry.body.rising ? 'Foam rises' : 'Quiet again';
    case 'here':
      return 'Somebody is here';
    case 'vouched':
      return 'The thermometer was compared and is right';
    case 'probeUnit':
      return `The thermometer shows ${{ Cel: '°C', '[degF]': '°F', K: 'K' }[entry.body.unit]}`;
    case 'weight':
      return `Weighed: ${grams(entry.body.grossKg - entry.body.tareKg)} g in the pan`;
    case 'dilutionPh':
      return `pH ${entry.body.ph} of a dilution`;
    case 'dilutionBrix':
      return `${entry.body.brix} °Bx of a dilution`;
    case 'note':
      return entry.body.text;
    case 'photo':
      return `Picture: ${entry.body.reference}`;
    case 'seen':
      return `Alarm seen: ${entry.body.alarm}`;
    case 'putAside':
      return `Alarm put aside: ${entry.body.alarm}, ${entry.body.reason}`;
    case 'ended':
      return entry.body.how === 'done' ? 'The cook was ended' : 'The cook was given up';
    case 'begun':
      return 'The cook began';
    case 'clock':
      return 'A clock jumped';
    case 'correction':
      return 'Put right';
  }
}

const grams = (kg: number): string => (kg * 1000).toFixed(kg < 0.01 ? 2 : kg < 0.1 ? 1 : 0);
