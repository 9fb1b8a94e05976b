import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Cooked, readLine } from '../../src/cli/follow/line.ts';
import { Stop } from '../../src/cli/stop.ts';
import { begunBody } from '../sampleCook.ts';
import { casesOf, everyCase, tallyOf, timeFor } from './cases.ts';
import { anyText, oddValue, spoilt, spoiltText } from './spoilt.ts';

const cases = casesOf(5000);
const cooked: Cooked = { kit: begunBody.kit, steps: begunBody.steps };

it(
  'any line of `umberpan follow` says one thing, or is refused with its field',
  async () => {
    const tally = tallyOf('lines of a cook that is followed');
    await everyCase(lines, cases, (text) => {
      try {
        const { timeS, said } = readLine(text, cooked);
        tally.count(said.kind);
        expect(Number.isFinite(timeS)).toBe(true);
        expect(JSON.stringify(said)).not.toContain('null');
      } catch (error) {
        tally.count('refused');
        if (!(error instanceof Stop)) throw error;
        const { kind, field, message } = error.problem;
        expect(kind).toBe('misused');
        expect(field).toMatch(/\S/);
        expect(message).toContain(`${field}: `);
      }
    });
    tally.tell();
  },
  timeFor(cases, 1),
);

const t = fc.double({ min: 0, max: 40_000, noNaN: true });
const right = fc
  .tuple(
    t,
    fc.constantFrom<object>(
      ...[
        { reading: 131.2, unit: 'Cel' },
        { reading: 268.1, unit: '[degF]', byHand: true },
        { heat: 3 },
        { spoonfuls: 1 },
      ],
      ...[{ water: '5mL' }, { alkali: 1 }, { step: 'brown' }, { poured: true }, { weight: 0.43 }, { spoonColour: 2.1 }],
      ...[{ dilutionPh: 5.2 }, { solids: 0.95 }],
    ),
  )
  .map(([timeS, said]) => ({ t: timeS, ...said }));
const json = (values: fc.Arbitrary<unknown>) => values.map((value) => JSON.stringify(value) ?? '');

const lines = fc.oneof(
  { weight: 2, arbitrary: json(right) },
  { weight: 6, arbitrary: json(spoilt(right)) },
  { weight: 2, arbitrary: spoiltText(json(right)) },
  { weight: 1, arbitrary: json(oddValue) },
  { weight: 1, arbitrary: anyText() },
);
