/** Letting devices in and out: codes, pairing, the list, and how whoever asks stands here. */
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import {
  bindingSchema,
  deviceSchema,
  invitationSchema,
  invitedSchema,
  misbound,
  pairedSchema,
  pairingSchema,
  standingSchema,
} from '../../api/device.ts';
import { z } from '../../api/zod.ts';
import type { Devices } from '../devices/devices.ts';
import type { Invitations } from '../devices/invitations.ts';
import { Refusal } from '../problem.ts';
import { findCook } from '../store/cooks.ts';
import type { Store } from '../store/store.ts';
import { noCook } from './cooks.ts';
import { byId, problem } from './respond.ts';

const nothing = { 204: z.null(), default: problem };

/** @param addresses where devices on the network reach this server */
export function deviceRoutes(
  instance: FastifyInstance,
  { db }: Store,
  devices: Devices,
  invitations: Invitations,
  addresses: () => readonly string[],
) {
  const app = instance.withTypeProvider<ZodTypeProvider>();

  async function refuseUnknown(cook: string | null | undefined) {
    if (cook && cook !== 'next' && !(await findCook(db, cook))) noCook(cook);
  }

  app.get(
    '/api/standing',
    { schema: { summary: 'Who this server takes you for', response: { 200: standingSchema } } },
    ({ caller }) => {
      if (caller.kind === 'device') return { standing: 'paired' as const, device: caller.device };
      return { standing: caller.kind === 'host' ? ('host' as const) : ('unpaired' as const), device: null };
    },
  );

  app.post(
    '/api/invitations',
    {
      schema: {
        summary: 'Make a code that lets one device in',
        body: invitationSchema,
        response: { 201: invitedSchema, default: problem },
      },
    },
    async ({ body }, reply) => {
      await refuseUnknown(body.cook);
      const { code, role, endsMs } = invitations.invite(body);
      reply.code(201);
      const links = addresses().map((address) => pairingLink(address, code));
      return { code, role, ends: new Date(endsMs).toISOString(), links };
    },
  );

  app.post(
    '/api/pairing',
    {
      schema: {
        summary: 'Use a code up: lets this device in, and tells it its token',
        body: pairingSchema,
        response: { 201: pairedSchema, default: problem },
      },
    },
    async ({ body }, reply) => {
      const invited = invitations.use(body.code);
      reply.code(201);
      return devices.letIn(body.name, invited);
    },
  );

  app.get(
    '/api/devices',
    {
      schema: {
        summary: 'The devices that are let in',
        response: { 200: z.object({ devices: z.array(deviceSchema) }), default: problem },
      },
    },
    () => ({ devices: devices.list() }),
  );

  app.put(
    '/api/devices/:id/cook',
    {
      schema: {
        summary: 'Say which cook a thermometer sends to, or a guest sees',
        params: byId,
        body: bindingSchema,
        response: { 200: deviceSchema, default: problem },
      },
    },
    async ({ params: { id }, body: { cook } }) => {
      const device = devices.ofId(id) ?? noDevice(id);
      const trouble = misbound(device.role, cook);
      if (trouble) {
        const message = `cook ${trouble}`;
        throw new Refusal('invalid-input', message, { errors: [{ field: 'cook', message }] });
      }
      await refuseUnknown(cook);
      await devices.bind(id, cook);
      return devices.ofId(id) ?? noDevice(id);
    },
  );

  app.delete(
    '/api/devices/:id',
    { schema: { summary: 'Let a device out, at once', params: byId, response: nothing } },
    async ({ params }, reply) => {
      if (!(await devices.letOut(params.id))) noDevice(params.id);
      return reply.code(204).send(null);
    },
  );

  app.delete(
    '/api/devices',
    { schema: { summary: 'Let all devices out but the one that asks', response: nothing } },
    async ({ caller }, reply) => {
      await devices.letOutAll(caller.kind === 'device' ? caller.device.id : undefined);
      return reply.code(204).send(null);
    },
  );
}

function noDevice(id: string): never {
  throw new Refusal('not-found', `There is no device ${id}.`);
}

/** The code is in the fragment: no browser sends that part, so it is in no log. */
export function pairingLink(address: string, code: string): string {
  return `${address}pair#${code}`;
}
