/** `/api/cooks/:id/file` and `/api/cooks/import`: a cook as a file, out and in. */
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { faultsOfFiled } from '../../api/filedEvent.ts';
import { z } from '../../api/zod.ts';
import { type FiledEvent, readCookFile, writeCookFile } from '../../core/log/cookFile.ts';
import type { KnownEvent } from '../../core/log/event.ts';
import { inOrder } from '../../core/log/order.ts';
import { upToDate } from '../../core/log/upgrade.ts';
import type { Logbook } from '../cooking/logbook.ts';
import { Refusal } from '../problem.ts';
import { sha256 } from '../sha256.ts';
import { findCook } from '../store/cooks.ts';
import { type Incoming, readEvents } from '../store/events.ts';
import type { Store } from '../store/store.ts';
import { noCook } from './cooks.ts';
import { byId, problem } from './respond.ts';

const ndjson = 'application/x-ndjson';
const bodyLimit = 25 * 1024 * 1024;

const taken = z.object({
  cook: z.string(),
  events: z.int(),
  new: z.int().describe('Events that were not here before.'),
});

export function cookFileRoutes(instance: FastifyInstance, { db }: Store, logbook: Logbook) {
  const app = instance.withTypeProvider<ZodTypeProvider>();

  app.get(
    '/api/cooks/:id/file',
    { schema: { summary: 'A cook as a file', params: byId, response: { 200: z.string(), default: problem } } },
    async ({ params: { id } }, reply) => {
      if (!(await findCook(db, id))) noCook(id);
      const { events } = await readEvents(db, id);
      reply.type(ndjson).header('content-disposition', `attachment; filename="cook-${id}.ndjson"`);
      return reply.send(writeCookFile(id, events, sha256));
    },
  );

  instance.register(async (scope) => {
    scope.removeAllContentTypeParsers();
    scope.addContentTypeParser(ndjson, { parseAs: 'string', bodyLimit }, (_, body, done) => done(null, body));
    scope.withTypeProvider<ZodTypeProvider>().post(
      '/api/cooks/import',
      {
        bodyLimit,
        config: { takes: [ndjson] },
        schema: {
          summary: 'Take in the file of a cook',
          consumes: [ndjson],
          body: z.string(),
          response: { 200: taken, default: problem },
        },
      },
      async ({ body }) => {
        const { cook, begun, incoming } = readable(body, logbook.now());
        const appended = await logbook.takeIn(begun, incoming);
        if (appended.outcome === 'stored') return { cook, events: incoming.length, new: appended.fresh.length };
        const { id } = incoming[appended.place].event;
        throw new Refusal('event-differs', `Event ${id} exists and is not the one in the file. Nothing was written.`);
      },
    );
  });
}

/** @param now stands for when the server had an event, where the file does not say */
function readable(text: string, now: string) {
  const file = readCookFile(text, sha256);
  if (file.kind === 'refused') throw refusedLine(file.line, file.reason);
  const { cook, events, contents } = file;
  const incoming = events.map((event, place): Incoming => {
    const [fault] = faultsOfFiled(event);
    if (fault) throw refusedLine(place + 2, fault.message);
    return { event, tServer: event.tServer ?? now, content: contents[place] };
  });
  return { cook, begun: beginningOf(events), incoming };
}

function beginningOf(events: readonly FiledEvent[]) {
  const beginnings = events.filter(({ kind }) => kind === 'begun');
  // Which of several was first, the whole log has to tell.
  const inTime = beginnings.length > 1 ? inOrder(events).map(({ event }) => event) : beginnings;
  const known = inTime.map((event) => upToDate(event));
  const begun = known.find((event): event is Extract<KnownEvent, { kind: 'begun' }> => event?.kind === 'begun');
  if (!begun) throw refusedLine(1, 'the file does not say how the cook began, or a later Umberpan wrote it');
  return begun;
}

function refusedLine(line: number, reason: string) {
  const message = `line ${line}: ${reason}`;
  return new Refusal('invalid-input', message, { errors: [{ field: `line ${line}`, message }] });
}
