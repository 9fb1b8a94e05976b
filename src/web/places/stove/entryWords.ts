/** Entries of the log as they are read. */
import type { AnyEntry } from '../../../core/log/corrections.ts';
import { ebcOf, grams } from '../../parts/figures.ts';
import { stepNames } from '../../parts/stepNames.ts';
import { degrees, type TemperatureUnit } from '../../parts/temperature.ts';
import { type Cook, spoonName } from './deedWords.ts';

export function entryWords(
  entry: AnyEntry,
  { kit, steps }: Pick<Cook, 'kit' | 'steps'>,
  unit: TemperatureUnit,
): string {
  switch (entry.kind) {
    case 'heat':
      return entry.body.notch === 0 ? 'Off the heat' : `Dial ${entry.body.notch}`;
    case 'water': {
      const { waterKg, spoonfuls } = entry.body;
      if (spoonfuls === 0) return `${grams(waterKg)} g of hot water`;
      const many = spoonfuls === 0.5 ? 'Half a' : spoonfuls === 1 ? 'One' : String(Number(spoonfuls.toFixed(1)));
      return `${many} ${spoonName(kit)}${spoonfuls > 1 ? 's' : ''} of cold water`;
    }
    case 'alkali':
      return `Alkali, part ${entry.body.part}`;
    case 'stir':
      return 'Stirred';
    case 'spoonTest': {
      const { a430, behaviour } = entry.body;
      const colour = a430 === null ? [] : [`${ebcOf(a430)} EBC`];
      return `Spoon test: ${[...colour, ...(behaviour ? [behaviour] : [])].join(', ')}`;
    }
    case 'step':
      return `Begun: ${stepNames[steps[entry.body.index]?.kind ?? 'cast']}`;
    case 'poured':
      return 'Poured';
    case 'reading':
      return entry.body.valueC === null ? 'No reading' : `Read ${degrees(entry.body.valueC, unit)}`;
    case 'foam':
      return entry.body.rising ? 'Foam rises' : 'Quiet again';
    case 'here':
      return 'Somebody is here';
    case 'vouched':
      return 'The thermometer is right';
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
      return 'Photo';
    case 'begun':
      return 'The cook began';
    case 'ended':
      return entry.body.how === 'done' ? 'The cook was ended' : 'The cook was given up';
    case 'seen':
    case 'putAside':
    case 'clock':
    case 'correction':
      return entry.kind;
  }
}
