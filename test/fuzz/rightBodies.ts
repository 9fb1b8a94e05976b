// For each address that takes a body, some that it takes: what a schema alone draws is mostly refused by rules of several fields.
import fc from 'fast-check';
import type { EventKind } from '../../src/core/log/bodies.ts';
import { descriptors } from '../../src/core/lot/taste.ts';
import { defaultKit } from '../../src/core/pan/kit.ts';
import { defaultRequest } from '../../src/core/planning/request.ts';
import { begunBody, sampleBodies, sampleCook, sampleDevice } from '../sampleCook.ts';

const at = '2031-05-10T10:00:00.000Z';
const around = (mid: number) => ({ low: 0.9 * mid, mid, high: 1.1 * mid });
const unasked = Object.fromEntries(descriptors.map((name) => [name, null]));
const light = { name: 'Shards', weighedKg: null, alkali: null };
const lot = {
  ...{ ...light, origin: 'cooked', cookId: null, planId: null, madeAt: at, form: 'hard' },
  expected: {
    ...{ massKg: around(0.39), waterShare: around(0.025), inverted: around(0.3), a430: around(8) },
    ...{ ebc: around(200), srm: around(101.6), icumsa: around(9e4) },
  },
};
const glass = {
  name: 'Abbey, winter',
  rest: { volumeL: 20, gravity: 1.06, a430PerCm: 0.48, attenuation: 0.75, sodiumMgPerL: 28, calciumMgPerL: 50 },
  doses: [],
  ...{ kettleLossL: 1, pathCm: 7, boughtPricePerKg: null, bottledOn: '2031-12-20' },
};
const tasting = { tastedAt: at, weeks: 2, strengths: unasked, liking: 8, note: 'Plums; a bit thin.' };
const brix = { brix: 25.6, temperatureC: 22, compensated: false, sugarG: 10, waterG: 20 };
const notes = [
  { kind: 'stocked', at, how: 'took', kg: 0.12, why: 'Abbey, winter' },
  { kind: 'measured', at, reading: { method: 'refractometer', ...brix } },
  { kind: 'tasted', at, strengths: unasked, texture: 'dry snap', note: '', blind: true },
];
const input = {
  ...{ kind: 'mqtt', name: 'Shed', probe: 'pan', unit: 'Cel', everyS: 1, on: false },
  ...{ broker: 'mqtt://127.0.0.1', topic: 'kitchen/pan', path: 'outer.temperature' },
};

const deviceSays = (cook: string) => {
  const device = sampleDevice(cook);
  const kinds = Object.keys(sampleBodies) as (keyof typeof sampleBodies)[];
  return fc
    .tuple(fc.constantFrom(...kinds), fc.nat({ max: 10_000 }))
    .map(([kind, second]) => device.make(kind as EventKind, sampleBodies[kind] as never, second));
};

/** @param cook one that is there */
export function rightBodies(cook: string): Readonly<Record<string, fc.Arbitrary<unknown>>> {
  const event = deviceSays(cook);
  const another = fc.nat({ max: 3 }).map((readings) => sampleCook(readings).events);
  const inputs = fc.constantFrom<unknown>(input, {
    ...input,
    kind: 'serial',
    broker: undefined,
    topic: undefined,
    path: undefined,
    port: '/dev/ttyUSB0',
    baud: 9600,
    pattern: 'T={}',
  });
  return {
    'POST /api/kits': fc.constant(defaultKit),
    'PUT /api/kits/{id}': fc.constant(defaultKit),
    'POST /api/plans': fc.constant({ kitId: null, request: defaultRequest }),
    'POST /api/lots': fc.constant(lot),
    'PUT /api/lots/{id}': fc.constant(light),
    'POST /api/lots/{id}/notes': fc.constantFrom(...notes),
    'POST /api/glasses': fc.constant(glass),
    'PUT /api/glasses/{id}': fc.constant(glass),
    'POST /api/glasses/{id}/tastings': fc.constant(tasting),
    'POST /api/cooks': fc
      .nat({ max: 9 })
      .map((second) => sampleDevice(sampleCook(0).cook).make('begun', begunBody, second)),
    'POST /api/cooks/{id}/events': fc.oneof(event, fc.array(event, { minLength: 1, maxLength: 3 })),
    'POST /api/cooks/whole': another,
    'POST /api/readings': fc.constant({ unit: 'F', value: 250.5 }),
    'POST /api/inputs': inputs,
    'PUT /api/inputs/{id}': inputs,
    'POST /api/invitations': fc.constant({ role: 'reader', hours: 3 }),
    'POST /api/pairing': fc.constant({ code: 'ABCD2345', name: 'Phone' }),
  };
}
