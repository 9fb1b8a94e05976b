/** A JSON schema in a few words. */

export interface Schema {
  readonly type?: string | readonly string[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly items?: Schema | boolean;
  readonly prefixItems?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly maxItems?: number;
  readonly format?: string;
  readonly description?: string;
  readonly $ref?: string;
}

export function inWords(schema: Schema): string {
  if (schema.$ref) return schema.$ref.split('/').at(-1) ?? '';
  if (schema.const !== undefined) return `\`${JSON.stringify(schema.const)}\``;
  if (schema.enum) return schema.enum.map((each) => `\`${each}\``).join(', ');
  const either = schema.anyOf ?? schema.oneOf;
  if (either) return [...new Set(either.map(inWords))].join(' or ');
  if (schema.type === 'array') return `list of ${listed(schema)}`;
  if (schema.type === 'object')
    return schema.properties ? `{ ${Object.keys(schema.properties).join(', ')} }` : 'object';
  const range = rangeOf(schema);
  return [schema.format ?? String(schema.type ?? 'anything'), range].filter(Boolean).join(', ');
}

function listed({ items, prefixItems }: Schema): string {
  if (prefixItems) return `${prefixItems.length}: ${prefixItems.map(inWords).join('; ')}`;
  return typeof items === 'object' ? inWords(items) : 'anything';
}

function rangeOf({ minimum, maximum, minLength, maxLength }: Schema): string {
  if (minimum !== undefined && maximum !== undefined && maximum < Number.MAX_SAFE_INTEGER)
    return `${minimum} to ${maximum}`;
  if (minimum !== undefined) return `${minimum} and more`;
  if (maxLength !== undefined) return `${minLength ?? 0} to ${maxLength} characters`;
  return '';
}

/** Rows of an object's fields. */
export function fieldRows({ properties = {}, required = [] }: Schema): string[][] {
  return Object.entries(properties).map(([name, field]) => [
    `\`${name}\``,
    required.includes(name) ? '' : 'may be left out',
    inWords(field),
    field.description ?? '',
  ]);
}
