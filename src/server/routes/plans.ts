/** `/api/plans`: what was asked for, newest first. */
import { randomUUID } from 'node:crypto';
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { countInText, recordId } from '../../api/field.ts';
import { newPlanSchema, planRecordSchema } from '../../api/plan.ts';
import { z } from '../../api/zod.ts';
import { requestRefusals } from '../../core/planning/refusals.ts';
import type { PlanRequest } from '../../core/planning/request.ts';
import { Refusal } from '../problem.ts';
import { findKit } from '../store/kits.ts';
import { createPlan, findPlan, listPlans, removePlan } from '../store/plans.ts';
import type { Store } from '../store/store.ts';
import { byId, problem, withKey } from './respond.ts';

const page = z.object({
  limit: countInText([1, 500]).default(100),
  before: recordId().optional().describe('The last plan of the page before.'),
});
const one = { 200: planRecordSchema, default: problem };

export function planRoutes(instance: FastifyInstance, { db }: Store) {
  const app = instance.withTypeProvider<ZodTypeProvider>();

  app.get(
    '/api/plans',
    {
      schema: {
        summary: 'Plans, newest first',
        querystring: page,
        response: { 200: z.object({ plans: z.array(planRecordSchema) }), default: problem },
      },
    },
    async (request) => ({ plans: await listPlans(db, request.query.limit, request.query.before) }),
  );

  app.get(
    '/api/plans/:id',
    { schema: { summary: 'One plan', params: byId, response: one } },
    async (request) => (await findPlan(db, request.params.id)) ?? missing(request.params.id),
  );

  app.post(
    '/api/plans',
    {
      schema: {
        summary: 'Keep a plan',
        headers: withKey,
        body: newPlanSchema,
        response: { ...one, 201: planRecordSchema },
      },
    },
    async (request, reply) => {
      const id = request.headers['idempotency-key'] ?? randomUUID();
      await refuseUnknownKit(request.body.kitId);
      refuseUnsafe(request.body.request);
      const { outcome, record } = await createPlan(db, id, request.body, new Date());
      if (outcome === 'taken') throw new Refusal('id-taken', `Plan ${id} exists and is not the one sent.`);
      if (outcome === 'new') reply.code(201).header('location', `/api/plans/${id}`);
      return record;
    },
  );

  app.delete(
    '/api/plans/:id',
    { schema: { summary: 'Remove a plan', params: byId, response: { 204: z.null(), default: problem } } },
    async (request, reply) => {
      if (!(await removePlan(db, request.params.id))) missing(request.params.id);
      return reply.code(204).send(null);
    },
  );

  /** What no kit makes safe is not kept; what a kit decides is asked again when the plan is opened with one. */
  function refuseUnsafe(request: PlanRequest) {
    const errors = requestRefusals(request).map(({ limit, field, message }) => ({
      field: `request.${field}`,
      message: `request.${field}: ${message} (${limit})`,
    }));
    if (errors.length > 0) throw new Refusal('unsafe', errors.map(({ message }) => message).join('. '), { errors });
  }

  async function refuseUnknownKit(kitId: string | null) {
    if (kitId === null || (await findKit(db, kitId))) return;
    const message = `kitId is "${kitId}"; there is no such kit`;
    throw new Refusal('invalid-input', message, { errors: [{ field: 'kitId', message }] });
  }
}

function missing(id: string): never {
  throw new Refusal('not-found', `There is no plan ${id}.`);
}
