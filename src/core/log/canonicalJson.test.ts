import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson, isCanonical } from './canonicalJson.ts';

/** A double from its bits, as RFC 8785 gives them. */
function double(bits: string): number {
  return Buffer.from(bits, 'hex').readDoubleBE();
}

describe('RFC 8785', () => {
  it.each([
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['ffefffffffffffff', '-1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'],
    ['c340000000000000', '-9007199254740992'],
    ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'],
    ['44b52d02c7e14af6', '1e+23'],
    ['44b52d02c7e14af7', '1.0000000000000001e+23'],
    ['444b1ae4d6e2ef4e', '999999999999999700000'],
    ['444b1ae4d6e2ef4f', '999999999999999900000'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['41b3de4355555553', '333333333.3333332'],
    ['41b3de4355555554', '333333333.33333325'],
    ['41b3de4355555555', '333333333.3333333'],
    ['41b3de4355555556', '333333333.3333334'],
    ['41b3de4355555557', '333333333.33333343'],
    ['becbf647612f3696', '-0.0000033333333333333333'],
    ['43143ff3c1cb0959', '1424953923781206.2'],
  ])('writes the number %s as %s (appendix B, from memory)', (bits, text) => {
    expect(canonicalJson(double(bits))).toBe(text);
  });

  it.each(['7fffffffffffffff', '7ff0000000000000', 'fff0000000000000'])('refuses %s, which is no number', (bits) => {
    expect(() => canonicalJson({ value: double(bits) })).toThrow(/allowed in JSON/);
  });

  it('writes the example of section 3.2.2 (from memory)', () => {
    const value = {
      numbers: JSON.parse('[333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001]'),
      string: '\u20ac$\u000F\u000aA\'\u0042\u0022\u005c\\"/',
      literals: [null, true, false],
    };
    expect(canonicalJson(value)).toBe(
      String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });

  it('sorts names by UTF-16 code units (the example of section 3.2.3, from memory)', () => {
    const value = {
      '\u20ac': 'Euro Sign',
      '\r': 'Carriage Return',
      '\ufb33': 'Hebrew Letter Dalet With Dagesh',
      '1': 'One',
      '\u{1f600}': 'Emoji: Grinning Face',
      '\u0080': 'Control',
      '\u00f6': 'Latin Small Letter O With Diaeresis',
    };
    const values = [...canonicalJson(value).matchAll(/:"([^"]+)"/g)].map(([, text]) => text);
    expect(values).toEqual([
      'Carriage Return',
      'One',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ]);
  });
});

it('reads back as what was written, and is written the same again', () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 5 }), (value) => {
      const text = canonicalJson(value);
      expect(canonicalJson(JSON.parse(text))).toBe(text);
      expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
    }),
  );
});

describe('a text is known to be canonical', () => {
  it('just when writing its value gives the text', () => {
    const texts = fc.oneof(
      fc.jsonValue({ maxDepth: 4 }).map((value) => JSON.stringify(value)),
      fc.jsonValue({ maxDepth: 4 }).map((value) => canonicalJson(value)),
      // Names that look like numbers are put first by JSON.parse, in an order of their own.
      fc
        .dictionary(fc.constantFrom('!', '1', '9', '10', 'a', '__proto__'), fc.integer())
        .map((value) => canonicalJson(value)),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const value = JSON.parse(text);
        return isCanonical(text, value) === (canonicalJson(value) === text);
      }),
      { numRuns: 2000 },
    );
  }, 30_000);

  it.each([
    ['{"!":1,"1":2}', true],
    ['{"10":1,"9":2}', true],
    ['{"9":2,"10":1}', false],
    ['{"a":1,"a":1}', false],
    ['{"a":1e999}', false],
    ['{"a":-0}', false],
    ['{"a":1.0}', false],
    ['{"a":"\\u0061"}', false],
    ['[ 1]', false],
    ['{"__proto__":{"b":1,"a":1}}', false],
    ['['.repeat(1e5) + ']'.repeat(1e5), false],
  ])('%.20s: %s', (text, so) => {
    expect(isCanonical(text, JSON.parse(text))).toBe(so);
  });
});

it('does not depend on the order in which fields were written', () => {
  const fields = fc.uniqueArray(fc.tuple(fc.string({ unit: 'binary' }), fc.integer()), { selector: ([name]) => name });
  fc.assert(
    fc.property(fields, (list) => {
      const text = (entries: typeof list) => canonicalJson(Object.fromEntries(entries));
      expect(text(list.toReversed())).toBe(text(list));
    }),
  );
});

it('leaves out what is undefined, and refuses what JSON can not say', () => {
  expect(canonicalJson({ b: undefined, a: 1 })).toBe('{"a":1}');
  for (const value of [undefined, 1n, () => 1, Symbol('s')]) expect(() => canonicalJson([value])).toThrow(TypeError);
});
