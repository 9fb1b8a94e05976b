// A whole workspace over the API, out and in: the same bytes, all or nothing, and never over what is kept unless that was said.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, it } from 'vitest';
import { follow, listeningServer } from '../../../test/liveServer.ts';
import { sampleCook } from '../../../test/sampleCook.ts';
import { scratchFolder } from '../../../test/testServer.ts';
import { defaultKit } from '../../core/pan/kit.ts';
import { steadyClock } from '../cooking/steadyClock.ts';
import type { ServerOptions } from '../server.ts';

const json = { 'content-type': 'application/json' };

async function serving(options: Partial<ServerOptions> = {}) {
  const folder = scratchFolder();
  const { address, store } = await listeningServer(folder, options);
  const post = async (path: string, body: unknown) => {
    const answer = await fetch(`${address}/api/${path}`, { method: 'POST', headers: json, body: JSON.stringify(body) });
    expect(answer.ok).toBe(true);
  };
  return {
    folder,
    store,
    address,
    text: async () => (await fetch(`${address}/api/workspace`)).text(),
    async putBack(body: string | Uint8Array<ArrayBuffer>, query = '', headers: object = {}) {
      const sent = { ...json, ...headers };
      const answer = await fetch(`${address}/api/workspace${query}`, { method: 'PUT', headers: sent, body });
      return { status: answer.status, said: (await answer.json()) as { detail?: string; changed?: boolean } };
    },
    keep: (name: string) => post('kits', { ...defaultKit, name }),
    async cook(part: 'whole' | 'beginning' = 'whole') {
      const { cook, begun, events } = sampleCook(3);
      await post('cooks', begun);
      if (part === 'whole') await post(`cooks/${cook}/events`, events.slice(1));
      return cook;
    },
    /** What lies in the folder beside the store of a server that runs. */
    left: () => readdirSync(folder).filter((name) => name.startsWith('incoming')),
    backups: () => readdirSync(join(folder, 'backups')).filter((name) => name.includes('before-replacing')),
  };
}

/** A workspace with a kit and a cook. */
async function written(): Promise<string> {
  const server = await serving();
  await server.keep('Hall “B”, päivä \u{1f36e}');
  await server.cook();
  return server.text();
}

it('is byte for byte the same after it was put in and taken out again; a second time changes nothing', async () => {
  const file = await written();
  const server = await serving();
  expect(await server.putBack(file)).toEqual({ status: 200, said: { rows: expect.any(Number), changed: true } });
  expect(await server.text()).toBe(file);
  const before = server.store.changes();
  expect((await server.putBack(file)).said.changed).toBe(false);
  expect(server.store.changes()).toBe(before);
  expect(server.left()).toEqual([]);
});

it('is put over what is kept only when that was said, and what was kept is backed up before', async () => {
  const file = await written();
  const server = await serving();
  await server.keep('Shed');
  await server.keep('Hut');
  const kept = await server.text();
  const { status, said } = await server.putBack(file);
  expect([status, said.detail]).toEqual([409, 'Here are 2 kits. In the file are 1 kit and 1 cook.']);
  expect(await server.text()).toBe(kept);
  expect((await server.putBack(file, '?replace=true')).said.changed).toBe(true);
  expect(await server.text()).toBe(file);
  expect(server.backups()).toHaveLength(1);
  // And the one that was there comes back as it was.
  expect((await server.putBack(kept, '?replace=true')).said.changed).toBe(true);
  expect(await server.text()).toBe(kept);
});

it.each([
  ['a letter changed', (file: string) => file.replace('Hall', 'Ball'), /the file was changed/],
  ['the end cut off', (file: string) => file.slice(0, -300), /line \d+|cut off/],
  ['nothing in it', () => '', /line 1: this is not the file of a workspace/],
  ['a cook’s log in it', () => '{"format":"umberpan-cook"}\n', /line 1: this is not the file of a workspace/],
])('with %s it is refused in words, and what is kept stays', async (_, spoil, reason) => {
  const file = spoil(await written());
  const server = await serving();
  await server.keep('Shed');
  const kept = await server.text();
  const { status, said } = await server.putBack(file, '?replace=true');
  expect([status, said.detail]).toEqual([400, expect.stringMatching(reason)]);
  expect(await server.text()).toBe(kept);
  expect(server.left()).toEqual([]);
});

it('nothing is replaced while somebody cooks; a cook of which nothing was heard for long is in nobody’s way', async () => {
  const file = await written();
  let ms = Date.now();
  const server = await serving({ clock: { ...steadyClock(), now: () => new Date(ms).toISOString() } });
  await server.cook('beginning');
  const kept = await server.text();
  const { status, said } = await server.putBack(file, '?replace=true');
  expect([status, said.detail]).toEqual([409, expect.stringMatching(/is being cooked\. End it first/)]);
  expect(await server.text()).toBe(kept);
  ms += 11 * 60_000;
  expect((await server.putBack(file, '?replace=true')).status).toBe(200);
});

it('who looks at a cook is told to read it anew', async () => {
  const file = await written();
  const server = await serving();
  const cook = await server.cook();
  const screen = await follow(`${server.address}/api/cooks/${cook}/live`);
  await screen.until(() => screen.all('beat').length > 0);
  await server.putBack(file, '?replace=true');
  await screen.until(() => screen.all('snapshot').length === 2);
  expect(screen.all('snapshot')[1]?.data).toBeNull();
});

it('what is packed small and unpacks to more than is allowed is cut off, and leaves nothing on the disk', async () => {
  const server = await serving();
  const packed = gzipSync(Buffer.alloc(210e6, ' '));
  const before = process.memoryUsage.rss();
  const { status } = await server.putBack(new Uint8Array(packed), '', { 'content-encoding': 'gzip' });
  expect(status).toBe(413);
  expect(process.memoryUsage.rss() - before).toBeLessThan(150e6);
  expect(server.left()).toEqual([]);
});

it('takes JSON alone', async () => {
  const server = await serving();
  expect((await server.putBack(await written(), '', { 'content-type': 'text/plain' })).status).toBe(415);
});
