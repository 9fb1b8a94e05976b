/** Every change to the tables, by name, in the order of the names. One that was released is never edited: add another. */
import type { Migration } from 'kysely';
import { kitsAndPlans } from './0001-kits-and-plans.ts';
import { cooksAndEvents } from './0002-cooks-and-events.ts';
import { lots } from './0003-lots.ts';
import { glassesAndTastings } from './0004-glasses-and-tastings.ts';
import { lotNotes } from './0005-lot-notes.ts';
import { cookSummaries } from './0006-cook-summaries.ts';
import { devicesAndInputs } from './0007-devices-and-inputs.ts';
import { devicesCooks } from './0008-devices-cooks.ts';

export const migrations: Readonly<Record<string, Migration>> = {
  '0001-kits-and-plans': kitsAndPlans,
  '0002-cooks-and-events': cooksAndEvents,
  '0003-lots': lots,
  '0004-glasses-and-tastings': glassesAndTastings,
  '0005-lot-notes': lotNotes,
  '0006-cook-summaries': cookSummaries,
  '0007-devices-and-inputs': devicesAndInputs,
  '0008-devices-cooks': devicesCooks,
};
