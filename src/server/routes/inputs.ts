/** `/api/inputs`: the thermometers that the server listens to by itself, and where they reach its own broker. */
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { inputListSchema, inputSchema, portsSchema } from '../../api/input.ts';
import { z } from '../../api/zod.ts';
import type { Inputs } from '../inputs/inputs.ts';
import { serialPorts } from '../inputs/serialSource.ts';
import { Refusal } from '../problem.ts';
import { byId, problem } from './respond.ts';

/** @param broker addresses of the server's own broker, or null */
export function inputRoutes(instance: FastifyInstance, inputs: Inputs, broker: () => string[] | null) {
  const app = instance.withTypeProvider<ZodTypeProvider>();
  const all = async () => ({ inputs: await inputs.list(), broker: broker() });

  app.get(
    '/api/inputs',
    { schema: { summary: 'The inputs, and how each does', response: { 200: inputListSchema, default: problem } } },
    all,
  );

  app.get(
    '/api/inputs/ports',
    { schema: { summary: 'The serial ports of the server', response: { 200: portsSchema, default: problem } } },
    async () => ({ ports: await serialPorts() }),
  );

  app.post(
    '/api/inputs',
    {
      schema: {
        summary: 'Listen to a thermometer',
        body: inputSchema,
        response: { 201: z.object({ id: z.uuid() }), default: problem },
      },
    },
    async ({ body }, reply) => {
      reply.code(201);
      return { id: await inputs.add(body) };
    },
  );

  app.put(
    '/api/inputs/:id',
    {
      schema: {
        summary: 'Change an input',
        params: byId,
        body: inputSchema,
        response: { 200: inputListSchema, default: problem },
      },
    },
    async ({ params, body }) => {
      if (!(await inputs.change(params.id, body))) noInput(params.id);
      return all();
    },
  );

  app.delete(
    '/api/inputs/:id',
    { schema: { summary: 'Take an input away', params: byId, response: { 204: z.null(), default: problem } } },
    async ({ params }, reply) => {
      if (!(await inputs.remove(params.id))) noInput(params.id);
      return reply.code(204).send(null);
    },
  );
}

function noInput(id: string): never {
  throw new Refusal('not-found', `There is no input ${id}.`);
}
