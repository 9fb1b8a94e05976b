/** What commands print with `--json`: fields by command, and the JSON Schema of all. */
import { documents, documentsJsonSchema } from '../../src/cli/documents/documents.ts';
import { page, table } from './markdown.ts';
import { fieldRows, type Schema } from './schema.ts';

export function documentsPage(): string {
  const whole = documentsJsonSchema();
  const defs = whole.$defs as Readonly<Record<string, Schema>>;
  const parts = Object.entries(documents).map(([command, { meta }]) => {
    const id = meta()?.id ?? '';
    const schema = defs[id] ?? {};
    const each = typeof schema.items === 'object' ? schema.items : schema;
    const list = each === schema ? '' : 'A list, of each:\n\n';
    return `## ${command}\n\n\`${id}\`. ${list}${table(['field', '', 'what is allowed', ''], fieldRows(each))}`;
  });
  return page(
    'Documents',
    'What commands print on standard output with `--json`, one document each; masses in kg, lengths in m, temperatures in °C, unless a name carries its unit in UCUM. What is wrong comes on standard error as one line. Tests hold real outputs to these schemas.',
    [...parts, `## The schemas\n\nJSON Schema 2020-12.\n\n\`\`\`json\n${JSON.stringify(whole, undefined, 1)}\n\`\`\``],
  );
}
