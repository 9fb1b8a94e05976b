/** The generated reference: page by page, below `docs/reference`. */
import { alarmsPage } from './alarms.ts';
import { apiPage } from './api.ts';
import { commandsPage } from './commands.ts';
import { documentsPage } from './documents.ts';
import { eventsPage } from './events.ts';
import { parametersPage } from './parameters.ts';

export async function referencePages(): Promise<Readonly<Record<string, string>>> {
  return {
    alarms: alarmsPage(),
    api: await apiPage(),
    commands: commandsPage(),
    documents: documentsPage(),
    events: eventsPage(),
    parameters: parametersPage(),
  };
}
