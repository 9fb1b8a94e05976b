import { expect, test } from 'vitest';
import { bareCook } from '../../../test/bareCook.ts';
import { defaultKit } from '../pan/kit.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import { createRehearsal } from './rehearsal.ts';
import { revealOf } from './reveal.ts';

const plain = { alkali: [], waitS: 0, approachNotch: 5, holdNotch: 1 } as const;
const dissolve = { ...plain, kind: 'dissolve', bandC: [21, 106], end: { reachedC: 106 } } as const;
const charge = { sucroseKg: 0.4, waterKg: 0.13, maltExtractKg: 0.0032, citricAcidKg: 0 };

test('the reveal sets what was drawn against the twin, and says rightly which lies inside its 10-90 % range', () => {
  const rehearsal = createRehearsal({
    prepared: prepareKit(defaultKit),
    begun: bareCook(charge, [dissolve], 4),
    members: 16,
  });
  const { pan, kitchen, surprises } = revealOf(rehearsal, defaultKit, charge);
  expect(surprises).toBeUndefined();
  const hidden = Object.fromEntries([...pan, ...kitchen].map((row) => [row.name, row.hidden]));
  // Before the heat is on: room temperature, nothing inverted, no colour, and all the water that went in.
  expect(hidden).toMatchObject({
    temperatureC: expect.closeTo(defaultKit.roomC, 6),
    inverted: expect.closeTo(0, 12),
    a430: expect.closeTo(0, 6),
    waterShare: expect.closeTo(0.13 / (0.4 + 0.13 + 0.0032), 9),
    stoveEfficiency: rehearsal.hidden.values.stoveEfficiency,
  });
  for (const { name, hidden: value, believed, inside } of [...pan, ...kitchen]) {
    expect([name, inside]).toEqual([name, value >= believed.low && value <= believed.high]);
  }
});
