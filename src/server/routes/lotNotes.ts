/** `/api/lots/:id/notes`: what was measured, tasted and taken of a lot. They come with the lot itself; here they are made and taken away. */
import { randomUUID } from 'node:crypto';
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { recordId } from '../../api/field.ts';
import { noteRecordSchema, noteSchema } from '../../api/lotNote.ts';
import { z } from '../../api/zod.ts';
import { mostNotes } from '../../core/lot/note.ts';
import { Refusal } from '../problem.ts';
import { createNote, removeNote } from '../store/lotNotes.ts';
import { findLot } from '../store/lots.ts';
import type { Store } from '../store/store.ts';
import { noLot } from './lots.ts';
import { byId, problem, withKey } from './respond.ts';

export function lotNoteRoutes(instance: FastifyInstance, { db }: Store) {
  const app = instance.withTypeProvider<ZodTypeProvider>();

  app.post(
    '/api/lots/:id/notes',
    {
      schema: {
        summary: 'Keep a note on a lot',
        params: byId,
        headers: withKey,
        body: noteSchema,
        response: { 200: noteRecordSchema, 201: noteRecordSchema, default: problem },
      },
    },
    async (request, reply) => {
      const lotId = request.params.id;
      if (!(await findLot(db, lotId))) noLot(lotId);
      const id = request.headers['idempotency-key'] ?? randomUUID();
      const made = await createNote(db, { id, lotId, note: request.body }, new Date());
      if (made === 'full')
        throw new Refusal('too-large', `Lot ${lotId} has ${mostNotes} notes, which is all that it may have.`);
      if (made.outcome === 'taken') throw new Refusal('id-taken', `Note ${id} exists and is not the one sent.`);
      if (made.outcome === 'new') reply.code(201);
      return made.record;
    },
  );

  app.delete(
    '/api/lots/:id/notes/:noteId',
    {
      schema: {
        summary: 'Take a note away',
        params: byId.extend({ noteId: recordId() }),
        response: { 204: z.null(), default: problem },
      },
    },
    async ({ params: { id, noteId } }, reply) => {
      if (!(await removeNote(db, id, noteId))) {
        throw new Refusal('not-found', `There is no note ${noteId} of lot ${id}.`);
      }
      return reply.code(204).send(null);
    },
  );
}
