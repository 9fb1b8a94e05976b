// Values that a JSON Schema allows, as the server's own OpenAPI document gives it: a new field is met without a word here.
import fc from 'fast-check';

export interface Schema {
  readonly $ref?: string;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly type?: string;
  readonly format?: string;
  readonly pattern?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly items?: Schema;
  readonly prefixItems?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
}

export interface Made {
  readonly components: Readonly<Record<string, Schema>>;
  /** Ids of what is there, which a third of the ids are. */
  readonly ids: readonly string[];
}

const mostItems = 4;
const letter = fc.constantFrom(
  ...['a', 'Z', '0', ' ', '-', '.', '<', '"', 'é', 'ß', '漢', 'e\u0301', '👍🏽', '\u200b'],
);

/** Texts that some rule or other takes: a zone, a broker, a port, a pattern, a unit, an entity tag. */
const familiar = ['Europe/Brussels', 'mqtt://pan.test', 'kitchen/pan', '/dev/ttyUSB0', 'T={}', 'F', '"1"', '"2"'];

export function arbitraryOf({ components, ids }: Made): (schema: Schema) => fc.Arbitrary<unknown> {
  const named = new Map<string, fc.Arbitrary<unknown>>();

  function of(schema: Schema): fc.Arbitrary<unknown> {
    if (schema.$ref !== undefined) return ofNamed(schema.$ref.split('/').at(-1) ?? '');
    const ways = schema.anyOf ?? schema.oneOf;
    if (ways) return fc.oneof(...ways.map(of));
    if (schema.const !== undefined) return fc.constant(schema.const);
    if (schema.enum) return fc.constantFrom(...schema.enum);
    switch (schema.type) {
      case 'object':
        return objectOf(schema);
      case 'array':
        return arrayOf(schema);
      case 'string':
        return textOf(schema);
      case 'integer':
        return integerOf(schema);
      case 'number':
        return numberOf(schema);
      case 'boolean':
        return fc.boolean();
      case 'null':
        return fc.constant(null);
      default:
        return fc.jsonValue();
    }
  }

  function ofNamed(name: string): fc.Arbitrary<unknown> {
    const known = named.get(name);
    if (known) return known;
    const made = of(components[name] ?? {});
    named.set(name, made);
    return made;
  }

  function objectOf({ properties = {}, required = [] }: Schema): fc.Arbitrary<unknown> {
    const fields = Object.fromEntries(Object.entries(properties).map(([name, schema]) => [name, of(schema)]));
    return fc.record(fields, { requiredKeys: required.filter((name) => name in fields), noNullPrototype: true });
  }

  function arrayOf({ prefixItems, items = {}, minItems = 0, maxItems = mostItems }: Schema): fc.Arbitrary<unknown> {
    if (prefixItems) return fc.tuple(...prefixItems.map(of));
    return fc.array(of(items), { minLength: minItems, maxLength: Math.max(minItems, Math.min(maxItems, mostItems)) });
  }

  function textOf({ format, pattern, minLength = 0, maxLength = 40 }: Schema): fc.Arbitrary<string> {
    if (format === 'uuid') {
      const fresh = fc.uuid({ version: pattern?.includes('-7[') ? 7 : 4 });
      return ids.length === 0 ? fresh : fc.oneof({ weight: 2, arbitrary: fresh }, fc.constantFrom(...ids));
    }
    if (format === 'date') return moment().map((text) => text.slice(0, 10));
    if (format === 'date-time') return moment();
    const plain = fc.string({ unit: letter, minLength, maxLength: Math.min(maxLength, 40) });
    const usual = fc.constantFrom(...familiar);
    return fc.oneof(plain, usual);
  }

  return of;
}

function moment(): fc.Arbitrary<string> {
  const range = { min: new Date(Date.UTC(1970, 0, 1)), max: new Date(Date.UTC(9999, 0, 1)), noInvalidDate: true };
  return fc.date(range).map((date) => date.toISOString());
}

function integerOf({ minimum = -1e6, maximum = 1e6 }: Schema): fc.Arbitrary<number> {
  const [min, max] = [Math.max(minimum, Number.MIN_SAFE_INTEGER), Math.min(maximum, Number.MAX_SAFE_INTEGER)];
  return fc.integer({ min, max });
}

function numberOf({ minimum = -1e6, maximum = 1e6 }: Schema): fc.Arbitrary<number> {
  return fc.oneof(fc.constantFrom(minimum, maximum), fc.double({ min: minimum, max: maximum, noNaN: true }));
}
