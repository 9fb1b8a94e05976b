/** The generated reference: file by file, below `docs/reference`. */
import { alarmsPage } from './alarms.ts';
import { apiPage } from './api.ts';
import { commandsPage } from './commands.ts';
import { documentsPage, documentsSchema } from './documents.ts';
import { eventsPage } from './events.ts';
import { parametersPage } from './parameters.ts';
import { safetyPage } from './safety.ts';

export async function referenceFiles(): Promise<Readonly<Record<string, string>>> {
  return {
    'alarms.md': alarmsPage(),
    'api.md': await apiPage(),
    'commands.md': commandsPage(),
    'documents.md': documentsPage(),
    'documents.schema.json': documentsSchema(),
    'events.md': eventsPage(),
    'parameters.md': parametersPage(),
    'safety.md': safetyPage(),
  };
}
