/** The kitchen sheet of a plan, with the range that the Desk shows and what made it at its foot. */
import { createRequire } from 'node:module';
import { sheetHtml } from '../../core/book/report/sheetHtml.ts';
import { centralValues } from '../../core/pan/model.ts';
import type { Account } from '../../core/planning/account.ts';
import { describe, drawOf, forecastDraws, forecastSeed, summarise } from '../../core/planning/forecast.ts';
import type { Planning } from './makePlan.ts';

const { version } = createRequire(import.meta.url)('#package.json') as { version: string };

export function sheetOf({ plan, course, kit, prepared }: Planning, account: Account, now: Date): string {
  const draws = Array.from({ length: forecastDraws }, (_, i) => drawOf(plan, prepared, forecastSeed, i));
  const forecast = summarise(plan, describe(course, centralValues(kit), 1), draws);
  const made = `Umberpan ${version}, ${now.toLocaleDateString('en-GB', { dateStyle: 'long' })}`;
  return sheetHtml({ plan, course, kit, forecast, account, made });
}
