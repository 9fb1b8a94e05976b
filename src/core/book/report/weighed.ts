/** What goes into the pan, as a report and a kitchen sheet name it. */
import type { AlkaliPart, Charge } from '../../pan/steps.ts';
import { grams } from './numbers.ts';

export function weighedRows({
  sucroseKg,
  waterKg,
  maltExtractKg,
  citricAcidKg,
}: Charge): [what: string, much: string][] {
  const rows: [string, string][] = [
    ['Sugar', grams(sucroseKg)],
    ['Water', grams(waterKg)],
    ['Dry malt extract', grams(maltExtractKg)],
  ];
  if (citricAcidKg > 0) rows.push(['Citric acid', grams(citricAcidKg)]);
  return rows;
}

export const alkaliTitle = (substance: AlkaliPart['substance']): string =>
  substance === 'sodiumHydroxide' ? 'Sodium hydroxide, food grade' : 'Slaked lime, food grade';
