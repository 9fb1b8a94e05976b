/** `/api/readings`: one line for a thermometer that can do no more than send a number. */
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { receiptSchema } from '../../api/event.ts';
import { exactly, personsName, recordId } from '../../api/field.ts';
import { refusal } from '../../api/refusalWords.ts';
import { z } from '../../api/zod.ts';
import { type ReadingUnit, readingUnits } from '../../core/log/bodies.ts';
import { unitSpelled } from '../../core/units/unitLookup.ts';
import type { Devices } from '../devices/devices.ts';
import { bindToCook } from '../devices/sending.ts';
import type { Caller } from '../guards/caller.ts';
import type { Intake } from '../inputs/intake.ts';
import { Refusal } from '../problem.ts';
import { findCook, runningCooks } from '../store/cooks.ts';
import type { Store } from '../store/store.ts';
import { noCook } from './cooks.ts';
import { receiptsOf } from './eventAnswers.ts';
import { problem } from './respond.ts';

const unitRefused = refusal('Cel, [degF] or K');
const unit = z
  .string({ error: unitRefused })
  .refine((spelling) => unitOf(spelling) !== undefined, { error: unitRefused })
  .transform(unitOf)
  .meta({ enum: [...readingUnits] });

const takes = ['application/json', 'text/plain'];

const settings = {
  cook: recordId().optional().describe('The cook; the one that is running when not given. A probe has one already.'),
  probe: personsName(40).default('probe').describe('Which thermometer.'),
};
const asJson = exactly({
  ...settings,
  unit,
  value: z
    .union([z.number(), z.string().max(100), z.null()], {
      error: refusal('a number, up to 100 characters of text, or null'),
    })
    .describe('What the thermometer shows; anything that is no number counts as no reading.'),
});
const asText = z.object({ ...settings, unit });

export function readingsRoute(instance: FastifyInstance, store: Store, intake: Intake, devices: Devices) {
  const { db } = store;
  // In a scope of its own: nowhere else is plain text taken.
  instance.register(async (scope) => {
    scope.addContentTypeParser('text/plain', { parseAs: 'string', bodyLimit: 1024 }, (_, body, done) =>
      done(null, body),
    );
    scope.withTypeProvider<ZodTypeProvider>().post(
      '/api/readings',
      {
        config: { takes },
        schema: {
          consumes: takes,
          summary: 'Add a reading: as JSON, or as a plain number with `?unit=F`',
          querystring: z.object({
            unit: z.string().optional(),
            cook: z.string().optional(),
            probe: z.string().optional(),
          }),
          body: z.union([z.string(), z.looseObject({})], { error: refusal('a number as text, or an object of JSON') }),
          response: { 201: receiptSchema, default: problem },
        },
      },
      async (request, reply) => {
        const { body, query, caller } = request;
        const given = typeof body === 'string' ? { ...asText.parse(query), value: body } : asJson.parse(body);
        const cook = await cookFor(caller, given.cook);
        const marked = intake.mark('http', given.probe, given.value, given.unit as ReadingUnit);
        const appended = await intake.write(cook, marked);
        if (appended.outcome === 'differs') throw new Error('A new event has the id of another.');
        reply.code(201);
        return receiptsOf(appended)[0];
      },
    );
  });

  async function cookFor(caller: Caller, id: string | undefined): Promise<string> {
    if (caller.kind === 'device' && caller.device.role === 'probe') {
      const own = await bindToCook(caller.device, devices, store);
      if (id === undefined || id === own) return own;
      throw new Refusal('not-allowed', `${caller.device.name} sends to one cook, and cook ${id} is another.`);
    }
    if (id !== undefined) return (await findCook(db, id))?.id ?? noCook(id);
    const running = await runningCooks(db);
    if (running.length === 1) return running[0].id;
    const which = running.length === 0 ? 'No cook is running' : `${running.length} cooks are running`;
    throw new Refusal('which-cook', `${which}: name the cook that the reading belongs to.`);
  }
}

/** The UCUM code of a unit of temperature, however it is spelled. */
function unitOf(spelling: string): ReadingUnit | undefined {
  const code = readingUnits.find((known) => known === spelling) ?? unitSpelled(spelling, 'temperature')?.ucum;
  return readingUnits.find((known) => known === code);
}
