/** What commands print with `--json`: fields by command, and the JSON Schema of all as a file of its own. */
import { documents, documentsJsonSchema } from '../../src/cli/documents/documents.ts';
import { page, table } from './markdown.ts';
import { fieldRows, type Schema } from './schema.ts';

export function documentsPage(): string {
  const defs = documentsJsonSchema().$defs as Readonly<Record<string, Schema>>;
  const parts = Object.entries(documents).map(([command, { meta }]) => {
    const id = meta()?.id ?? '';
    const schema = defs[id] ?? {};
    const each = typeof schema.items === 'object' ? schema.items : schema;
    const list = each === schema ? '' : ' A list, of each:';
    return `## ${command}\n\n\`${id}\`.${list}\n\n${table(['field', '', 'what is allowed', ''], fieldRows(each))}`;
  });
  return page(
    'Documents',
    'What commands print on standard output with `--json`, one document each, and `follow` without it, one a line; masses in kg, lengths in m, temperatures in °C, unless a name carries its unit in UCUM. What is wrong comes on standard error as one line; options that no command has, and ports that are none, are told in plain words. The JSON Schema (2020-12) of all is `docs/reference/documents.schema.json`; tests hold real outputs to it.',
    parts,
  );
}

export function documentsSchema(): string {
  return `${JSON.stringify(documentsJsonSchema(), undefined, 1)}\n`;
}
