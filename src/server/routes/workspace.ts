/** `/api/workspace`: everything that is kept, as one file, out and in. */
import { Readable } from 'node:stream';
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from '../../api/zod.ts';
import type { Logbook } from '../cooking/logbook.ts';
import { Refusal } from '../problem.ts';
import { type Replaced, replaceBy, type Staged, stageWorkspace } from '../store/replace.ts';
import type { Store } from '../store/store.ts';
import { StoreError } from '../store/storeError.ts';
import { type Counts, workspaceText } from '../store/workspace.ts';
import { problem } from './respond.ts';

const json = 'application/json';
/** It goes to the disk piece by piece: this bounds the disk and the time, not the memory. */
const mostMB = 200;

const replaced = z.object({
  rows: z.int().describe('Records in the file, events among them.'),
  changed: z.boolean().describe('False when all of it was here already.'),
});

export function workspaceRoutes(instance: FastifyInstance, store: Store, logbook: Logbook) {
  const summary = 'Everything that is kept, as one JSON file';
  instance
    .withTypeProvider<ZodTypeProvider>()
    .get(
      '/api/workspace',
      { schema: { summary, response: { 200: z.string(), default: problem } } },
      async (_, reply) => {
        reply.type(json).header('content-disposition', 'attachment; filename="umberpan-workspace.json"');
        return reply.send(Readable.from(workspaceText(store.db)) as unknown as string);
      },
    );

  instance.register(async (scope) => {
    scope.removeAllContentTypeParsers();
    scope.addContentTypeParser(json, { bodyLimit: mostMB * 1e6 }, (_, body, done) => done(null, body));
    scope.withTypeProvider<ZodTypeProvider>().put(
      '/api/workspace',
      {
        bodyLimit: mostMB * 1e6,
        schema: {
          summary: 'Put the file of a workspace in the place of all that is kept',
          description:
            'All of it, or nothing. Where other things are kept, that has to be said by `replace`; they are backed up first. ' +
            'Devices and thermometers stay as they are. Refused while a cook is under way.',
          consumes: [json],
          querystring: z.object({ replace: z.enum(['true', 'false']).default('false') }),
          body: z.unknown().describe(`The file as it was written, up to ${mostMB} MB.`),
          response: { 200: replaced, default: problem },
        },
      },
      async ({ body, query: { replace } }) => {
        const staged = await stageWorkspace(store, upToTheMost(body as Readable)).catch(refused);
        try {
          const consent = { mayReplace: replace === 'true', now: logbook.now() };
          return answerTo(staged, await logbook.replace(() => replaceBy(store, staged, consent)));
        } finally {
          await staged.remove();
        }
      },
    );
  });
}

/** What the head of the request says of its length may be wrong, or of what is still packed. */
async function* upToTheMost(body: AsyncIterable<Buffer>): AsyncGenerator<Buffer, void, void> {
  let bytes = 0;
  for await (const piece of body) {
    bytes += piece.length;
    if (bytes > mostMB * 1e6) throw new Refusal('too-large', `A workspace may have up to ${mostMB} MB here.`);
    yield piece;
  }
}

function refused(error: unknown): never {
  if (!(error instanceof StoreError)) throw error;
  const { message } = error;
  throw new Refusal('invalid-input', message, {
    errors: [{ field: /^line \d+/.exec(message)?.[0] ?? 'file', message }],
  });
}

function answerTo({ rows }: Staged, done: Replaced) {
  if (done.kind === 'underWay') {
    throw new Refusal('cook-under-way', `“${done.cook}” is being cooked. End it first; nothing was replaced.`);
  }
  if (done.kind === 'kept') {
    throw new Refusal('things-kept', `Here are ${told(done.here)}. In the file are ${told(done.staged)}.`);
  }
  return { rows, changed: done.kind === 'replaced' };
}

const names: readonly (readonly [keyof Counts, string, string])[] = [
  ['kit', 'kit', 'kits'],
  ['plan', 'plan', 'plans'],
  ['cook', 'cook', 'cooks'],
  ['lot', 'lot', 'lots'],
  ['glass', 'glass', 'glasses'],
];

/** Such as `2 kits, 1 plan and 5 cooks`. */
function told(counts: Counts): string {
  const parts = names.flatMap(([table, one, many]) => {
    const count = counts[table];
    return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
  });
  if (parts.length === 0) return 'no kits, plans, cooks, lots or glasses';
  return new Intl.ListFormat('en-GB', { type: 'conjunction' }).format(parts);
}
