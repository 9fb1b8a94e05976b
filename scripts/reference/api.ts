/** Every address of the server, from its own OpenAPI document. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { documentsJsonSchema } from '../../src/cli/documents/documents.ts';
import { buildServer } from '../../src/server/server.ts';
import { openStore } from '../../src/server/store/store.ts';
import { page, table } from './markdown.ts';
import { fieldRows, inWords, type Schema } from './schema.ts';

interface Parameter {
  readonly name: string;
  readonly in: string;
  readonly required?: boolean;
  readonly description?: string;
  readonly schema?: Schema;
}

interface Operation {
  readonly summary?: string;
  readonly description?: string;
  readonly parameters?: readonly Parameter[];
  readonly requestBody?: { readonly content: Readonly<Record<string, { readonly schema?: Schema }>> };
  readonly responses?: Readonly<Record<string, { readonly description?: string }>>;
}

interface Document {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: { readonly schemas: Readonly<Record<string, Schema>> };
}

export async function apiPage(): Promise<string> {
  const { paths, components } = await described();
  const operations = Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => operationPart(method, path, operation)),
  );
  const used = usedBy(paths, components.schemas);
  // What the command line prints is known under names, too, while these pages are made.
  const printed = (documentsJsonSchema().$defs ?? {}) as Readonly<Record<string, unknown>>;
  const schemas = Object.entries(components.schemas)
    .filter(([name, { properties }]) => properties && (used.has(name) || !(name in printed)))
    .map(([name, schema]) => `### ${name}\n\n${table(['field', '', 'what is allowed', ''], fieldRows(schema))}`);
  return page(
    'API',
    'What the server answers to. It describes itself as OpenAPI 3.1 at `/api/openapi.json`; whatever is refused comes as a problem document (RFC 9457), whose kinds are listed at `/api/problems`.',
    ['## Addresses', ...operations, '## What goes over the wire', ...schemas],
  );
}

/** Names of the schemas that something refers to, and of those that these refer to. */
function usedBy(part: unknown, schemas: Document['components']['schemas']): ReadonlySet<string> {
  const used = new Set<string>();
  const look = (at: unknown): void => {
    for (const [, name = ''] of JSON.stringify(at).matchAll(/"#\/components\/schemas\/([^"]+)"/g)) {
      if (used.has(name)) continue;
      used.add(name);
      look(schemas[name]);
    }
  };
  look(part);
  return used;
}

async function described(): Promise<Document> {
  const folder = mkdtempSync(join(tmpdir(), 'umberpan-'));
  const store = await openStore(folder);
  const app = await buildServer({ store, pages: folder });
  try {
    return (await app.inject('/api/openapi.json')).json();
  } finally {
    await app.close();
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

function operationPart(method: string, path: string, operation: Operation): string {
  const { summary, description, parameters = [], requestBody, responses = {} } = operation;
  const takes = Object.entries(requestBody?.content ?? {}).map(
    ([type, { schema }]) => `Takes ${type}${schema ? `: ${inWords(schema)}` : ''}.`,
  );
  const asked = parameters.map(({ name, in: where, required, schema, description: said }) => [
    `\`${name}\``,
    `${where}${required ? '' : ', may be left out'}`,
    schema ? inWords(schema) : '',
    said ?? '',
  ]);
  const answers = Object.entries(responses).map(([status, { description: said }]) =>
    said && said !== 'Default Response' ? `${status} (${said})` : status,
  );
  return [
    `### ${method.toUpperCase()} ${path}`,
    ...[summary, description].filter((each) => each !== undefined),
    ...takes,
    ...(asked.length > 0 ? [table(['', 'where', 'what is allowed', ''], asked)] : []),
    `Answers ${answers.join(', ')}.`,
  ].join('\n\n');
}
