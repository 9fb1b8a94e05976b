// A server on a fresh store in a scratch folder, asked without a socket; everything is gone when the test ends.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { buildServer, type ServerOptions } from '../src/server/server.ts';
import { openStore } from '../src/server/store/store.ts';

export function scratchFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'umberpan-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A changed record, with the version that it was made from as entity tag. */
export function put(app: Awaited<ReturnType<typeof testServer>>, url: string, payload: object, ifMatch?: string) {
  return app.inject({ method: 'PUT', url, payload, headers: ifMatch === undefined ? {} : { 'if-match': ifMatch } });
}

export async function testServer(options: Partial<ServerOptions> = {}) {
  const store = await openStore(scratchFolder());
  const app = await buildServer({ store, pages: scratchFolder(), ...options });
  onTestFinished(async () => {
    await app.close();
    await store.close();
  });
  return app;
}
