import { expect, test } from 'vitest';
import { entries } from './handbook/entries.ts';
import { type Input, number, percent, quantity, wholeNumber } from './input.ts';
import { kitInputs } from './plan/kitOptions.ts';
import { requestInputs } from './plan/requestOptions.ts';
import { runInputs } from './simulate.ts';
import { Stop } from './stop.ts';

function refused(input: Input<unknown>, text: string, flag = '--x') {
  try {
    return input.read(text, flag);
  } catch (error) {
    if (error instanceof Stop) return error.problem;
    throw error;
  }
}

const seed = wholeNumber('seed', [0, 2 ** 31 - 1]);

test.each([
  [quantity('mass', 'mass', 'g', [0.1, 5]), '-5g', "--x: '-5g' is outside the range; allowed: 100 g to 5000 g"],
  [
    quantity('mass', 'mass', 'g', [0.1, 5]),
    '1e999 g',
    "--x: '1e999 g' is too large, or divides by nothing; write a mass such as 500g, 1.1lb or 3 oz; allowed: 100 g to 5000 g",
  ],
  [
    quantity('mass', 'mass', 'g', [0.1, 5]),
    '5',
    "'5' has no unit; write a mass such as 500g, 1.1lb or 3 oz; allowed: 100 g to 5000 g",
  ],
  [quantity('temperature', 'room', 'C', [0, 45]), '-300C', "--x: '-300C' is outside the range; allowed: 0 °C to 45 °C"],
  [percent('share', [0.1, 0.9]), '-5', "--x: '-5' is outside the range; allowed: 10 to 90 %"],
  [number('dose', [0, 12], 'g/kg'), '-1e-10', "--x: '-1e-10' is outside the range; allowed: 0 to 12 g/kg"],
  [seed, '-1', "--x: '-1' is outside the range; allowed: whole numbers, 0 to 2147483647"],
  [seed, '2147483648', "--x: '2147483648' is outside the range; allowed: whole numbers, 0 to 2147483647"],
  [seed, '1.5', "--x: '1.5' is not whole; allowed: whole numbers, 0 to 2147483647"],
] as const)('a refusal names option, value and what is allowed (%#)', (input, text, message) => {
  expect(refused(input, text)).toMatchObject({ field: '--x', value: text, message: expect.stringContaining(message) });
});

test('limits themselves are taken, also when they are written in another unit', () => {
  expect([seed.read('0', '--x'), seed.read('2147483647', '--x')]).toEqual([0, 2147483647]);
  const room = quantity('temperature', 'room', 'C', [0, 45]);
  expect([room.read('32F', '--x'), room.read('113F', '--x')]).toEqual([0, 45]);
});

const options = [requestInputs, kitInputs, runInputs, ...entries.map(({ inputs }) => inputs)].flatMap((inputs) =>
  Object.entries<Input<unknown>>(inputs),
);

test.each(options.filter(([, { placeholder, several }]) => !several && !/[|]|word|text/.test(placeholder)))(
  '%s refuses what lies far below its range with the value and the range',
  (name, input) => {
    const unit = {
      '<mass>': 'g',
      '<volume>': 'mL',
      '<temperature>': 'C',
      '<duration>': 's',
      '<length>': 'm',
      '<pressure>': 'Pa',
      '<power>': 'W',
    }[input.placeholder];
    const text = `-99999${unit ?? ''}`;
    const problem = refused(input, text, `--${name}`);
    expect(problem).toMatchObject({ kind: 'outsideRange', field: `--${name}`, value: text });
    expect((problem as { message: string }).message).toMatch(/outside the range; allowed: .*\d.* to .*\d/);
  },
);
