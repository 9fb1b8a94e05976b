/** Every change to the tables, by name, in the order of the names. One that was released is never edited: add another. */
import type { Migration } from 'kysely';
import { kitsAndPlans } from './0001-kits-and-plans.ts';
import { cooksAndEvents } from './0002-cooks-and-events.ts';
import { lots } from './0003-lots.ts';
import { glassesAndTastings } from './0004-glasses-and-tastings.ts';

export const migrations: Readonly<Record<string, Migration>> = {
  '0001-kits-and-plans': kitsAndPlans,
  '0002-cooks-and-events': cooksAndEvents,
  '0003-lots': lots,
  '0004-glasses-and-tastings': glassesAndTastings,
};
