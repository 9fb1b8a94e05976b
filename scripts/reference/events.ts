/** Every kind of event that a cook's log is made of. */
import { eventJsonSchema } from '../../src/api/event.ts';
import { page, table } from './markdown.ts';
import { fieldRows, type Schema } from './schema.ts';

const head = ['field', '', 'what is allowed', ''];

export function eventsPage(): string {
  const { $defs } = eventJsonSchema() as unknown as { readonly $defs: Readonly<Record<string, Schema>> };
  const kinds = ($defs['Event']?.oneOf ?? []).map((each) =>
    each.$ref ? ($defs[each.$ref.split('/').at(-1) ?? ''] ?? each) : each,
  );
  const { body: _, ...envelope } = kinds[1]?.properties ?? {};
  const { kind: __, v: ___, ...rest } = envelope;
  return page(
    'Events',
    'A cook is a log of events that is only ever added to; what was wrong is put right by a further event. On the wire and in files each is one line of JSON. The whole schema is served at `/api/schemas/event.json` (JSON Schema 2020-12).',
    [
      `## What every event carries\n\n${table(head, fieldRows({ properties: rest, required: Object.keys(rest) }))}`,
      ...kinds.map(kindPart),
    ],
  );
}

function kindPart({ properties = {}, description }: Schema): string {
  const { kind, v, body } = properties;
  const bodies = body?.oneOf ?? body?.anyOf ?? [body ?? {}];
  const tables = bodies.map((each) => {
    const rows = fieldRows(each);
    return rows.length === 0 ? 'An empty body.' : table(head, rows);
  });
  const told = description ? `${description}\n\n` : '';
  return `## ${String(kind?.const)}\n\nVersion ${String(v?.const)}.\n\n${told}${[...new Set(tables)].join('\n\nor\n\n')}`;
}
