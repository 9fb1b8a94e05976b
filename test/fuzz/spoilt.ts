// What was right once and then spoilt: values of JSON in some of their places, and bytes and lines of files.
import fc from 'fast-check';

type Json = unknown;

/** Any code units at all, also halves of pairs. (A `fc.string` of such a unit takes seconds to be made.) */
export function anyText(mostCharacters = 30): fc.Arbitrary<string> {
  return fc.array(fc.nat({ max: 0xffff }), { maxLength: mostCharacters }).map((codes) => String.fromCharCode(...codes));
}

const nested = (depth: number): Json => (depth === 0 ? [] : [nested(depth - 1)]);

/** What programs stumble over. */
const oddities: readonly Json[] = [
  ...[null, true, false, 0, -0, 1, -1, 0.1, 1e308, -1e308, 5e-324, 2 ** 31, 2 ** 53, -(2 ** 63), 1e21],
  ...[
    '',
    ' ',
    '\u0000',
    '\n',
    '\ud800',
    '\u202e',
    'NaN',
    'Infinity',
    '1e999',
    '0x10',
    '1,5',
    '½',
    '=1+1',
    '../..',
    "'; --",
  ],
  ...['__proto__', 'constructor', 'toString', 'null', 'true', '2031-02-30T00:00:00.000Z', 'x'.repeat(3000)],
  ...['9999-12-31T23:59:59.999Z', '0000-01-01T00:00:00.000Z', '00000000-0000-0000-0000-000000000000'],
  ...[[], {}, [null], [[]], nested(40), { length: 1e9 }, { toString: 1 }, { ['__proto__']: null }],
];

export const oddValue: fc.Arbitrary<Json> = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...oddities) },
  { weight: 1, arbitrary: fc.jsonValue() },
  { weight: 1, arbitrary: anyText() },
  { weight: 1, arbitrary: fc.double() },
);

const oddName = fc.oneof(fc.constantFrom('__proto__', 'constructor', 'length', '', 'id', 'kind', 'body'), fc.string());

interface Change {
  readonly at: number;
  readonly how: 'replace' | 'remove' | 'add' | 'repeat';
  readonly name: string;
  readonly value: Json;
}

const change: fc.Arbitrary<Change> = fc.record({
  at: fc.nat(),
  how: fc.constantFrom('replace', 'replace', 'replace', 'remove', 'add', 'repeat'),
  name: oddName,
  value: oddValue,
});

/** The value with one to three changes at any depth. */
export function spoilt(right: fc.Arbitrary<Json>): fc.Arbitrary<Json> {
  return fc
    .tuple(right, fc.array(change, { minLength: 1, maxLength: 3 }))
    .map(([value, changes]) => changes.reduce<Json>((now, each) => changed(now, each), value));
}

type Path = readonly (string | number)[];

function changed(value: Json, { at, how, name, value: other }: Change): Json {
  const paths = pathsOf(value);
  const path = paths[at % paths.length] ?? [];
  return withAt(value, path, (old) => {
    if (how === 'replace') return other;
    if (how === 'add') return isObject(old) ? { ...old, [name]: other } : Array.isArray(old) ? [...old, other] : [old];
    if (how === 'repeat') return Array.isArray(old) ? [...old, ...old] : [old, old];
    return undefined;
  });
}

const isObject = (value: Json): value is Readonly<Record<string, Json>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function pathsOf(value: Json, path: Path = []): Path[] {
  if (typeof value !== 'object' || value === null || path.length > 12) return [path];
  return [path, ...Object.entries(value).flatMap(([name, inner]) => pathsOf(inner, [...path, name]))];
}

/** @param change of what stands there; undefined takes it out */
function withAt(value: Json, [first, ...rest]: Path, change: (old: Json) => Json): Json {
  if (first === undefined) return change(value);
  if (Array.isArray(value)) {
    const inner = withAt(value[Number(first)], rest, change);
    return inner === undefined ? value.toSpliced(Number(first), 1) : value.with(Number(first), inner);
  }
  const fields = Object.entries(value as Readonly<Record<string, Json>>);
  return Object.fromEntries(
    fields
      .map(([name, inner]) => [name, name === first ? withAt(inner, rest, change) : inner] as const)
      .filter(([, inner]) => inner !== undefined),
  );
}

const oddText = fc.oneof(
  fc.constantFrom(
    '',
    '\n',
    '\r',
    '\u0000',
    '"',
    ',',
    ';',
    '{',
    '[',
    '}',
    '\\',
    '\ufeff',
    '\ud800',
    '9'.repeat(400),
    '-',
    '1e999',
  ),
  fc.constantFrom('__proto__', '='.repeat(50), '['.repeat(20_000), '{"a":'.repeat(20_000), '"'.repeat(999)),
  anyText(20),
);

/** A text with some of its stretches put in the place of others, cut out, or replaced by what does not belong there. */
export function spoiltText(right: fc.Arbitrary<string>): fc.Arbitrary<string> {
  const cut = fc.record({ from: fc.nat(), length: fc.nat({ max: 40 }), put: oddText });
  return fc.tuple(right, fc.array(cut, { minLength: 1, maxLength: 3 })).map(([text, cuts]) =>
    cuts.reduce((now, { from, length, put }) => {
      const at = from % (now.length + 1);
      return now.slice(0, at) + put + now.slice(at + length);
    }, text),
  );
}

/** Lines of a text left out, repeated or in another order. */
export function spoiltLines(right: fc.Arbitrary<string>): fc.Arbitrary<string> {
  const move = fc.record({ from: fc.nat(), to: fc.nat(), how: fc.constantFrom('drop', 'repeat', 'swap') });
  return fc.tuple(right, move).map(([text, { from, to, how }]) => {
    const lines = text.split('\n');
    const [a, b] = [from % lines.length, to % lines.length];
    if (how === 'drop') return lines.toSpliced(a, 1).join('\n');
    if (how === 'repeat') return lines.toSpliced(b, 0, lines[a]).join('\n');
    return lines.with(a, lines[b]).with(b, lines[a]).join('\n');
  });
}
