/** Entries of the log as they are read at the Stove: shorter than in a table where a hand is busy, and in the unit that was chosen. */
import { entryText } from '../../../core/book/entryText.ts';
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
    case 'water': {
      const { waterKg, spoonfuls } = entry.body;
      if (spoonfuls === 0) return `${grams(waterKg)} g of hot water`;
      const many = spoonfuls === 0.5 ? 'Half a' : spoonfuls === 1 ? 'One' : String(Number(spoonfuls.toFixed(1)));
      return `${many} ${spoonName(kit)}${spoonfuls > 1 ? 's' : ''} of cold water`;
    }
    case 'alkali':
      return `Alkali, part ${entry.body.part}`;
    case 'spoonTest': {
      const { a430, behaviour } = entry.body;
      const colour = a430 === null ? [] : [`${ebcOf(a430)} EBC`];
      return `Spoon test: ${[...colour, ...(behaviour ? [behaviour] : [])].join(', ')}`;
    }
    case 'step':
      return `Begun: ${stepNames[steps[entry.body.index]?.kind ?? 'cast']}`;
    case 'reading':
      return entry.body.valueC === null ? 'No reading' : `Read ${degrees(entry.body.valueC, unit)}`;
    case 'vouched':
      return 'The thermometer is right';
    case 'seen':
    case 'putAside':
    case 'clock':
    case 'correction':
      return entry.kind;
    default:
      return entryText(entry, steps);
  }
}
