import { chmodSync, mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { listeningServer } from '../../../test/liveServer.ts';
import { sampleCook } from '../../../test/sampleCook.ts';
import { scratchFolder } from '../../../test/testServer.ts';
import { certificateFor, makeAuthority } from '../devices/trust.ts';
import { openDatabase } from '../store/sqlite.ts';
import { examine } from './examine.ts';
import type { Finding } from './finding.ts';
import { nodeFinding } from './machineFindings.ts';

const bad = (findings: readonly Finding[]) => findings.filter(({ state }) => state === 'wrong');
const named = (findings: readonly Finding[], name: string) => findings.find((finding) => finding.name.startsWith(name));

/** A store with a cook of some fifty events, and nobody on it. */
async function cookedFolder() {
  const folder = scratchFolder();
  chmodSync(folder, 0o700);
  const { app, address, stop } = await listeningServer(folder);
  const { begun, events, cook } = sampleCook();
  const headers = { host: new URL(address).host };
  await app.inject({ method: 'POST', url: '/api/cooks', payload: begun, headers });
  await app.inject({ method: 'POST', url: `/api/cooks/${cook}/events`, payload: events.slice(1), headers });
  await stop();
  return { folder, count: events.length };
}

const port = 1;
const later = Date.UTC(2032, 0, 1);

it('finds a sound store sound, changes nothing in it, and says what it found', async () => {
  const { folder, count } = await cookedFolder();
  const before = readdirSync(folder).filter((name) => !/-(wal|shm)$/.test(name));
  const findings = await examine(folder, port, later);
  expect(bad(findings)).toEqual([]);
  expect(named(findings, 'Logs')?.found).toContain(`${count} events`);
  expect(readdirSync(folder).filter((name) => !/-(wal|shm)$/.test(name))).toEqual(before);
});

it('finds one number changed in one event, and says what to do', async () => {
  const { folder } = await cookedFolder();
  const database = openDatabase(join(folder, 'umberpan.sqlite'));
  database.exec(`UPDATE event SET content = replace(content, '104', '105') WHERE seq = 17`);
  database.exec(`UPDATE event SET content = content || ' ' WHERE seq = 17`);
  database.close();
  const [finding, ...others] = bad(await examine(folder, port, later));
  expect(others).toEqual([]);
  expect(finding).toMatchObject({
    name: 'Logs',
    found: expect.stringMatching(/^1 of \d+/),
    advice: expect.stringContaining('backup'),
  });
});

it('judges a backup by what was written after it, and not by its age alone', async () => {
  const { folder } = await cookedFolder();
  const backups = join(folder, 'backups');
  const dayMs = 86_400_000;
  const state = async (nowMs: number) => {
    const { state, found } = named(await examine(folder, port, nowMs), 'Backups') ?? {};
    return [state, found];
  };
  // Nothing was written after it: however old, it holds everything.
  const wholeMs = Date.now() + 1000;
  const backUpAt = (ms: number) => {
    rmSync(backups, { recursive: true, force: true });
    mkdirSync(backups);
    writeFileSync(join(backups, `${new Date(ms).toISOString().replaceAll(':', '')}-daily.sqlite`), '');
  };
  backUpAt(wholeMs);
  expect(await state(wholeMs + 400 * dayMs)).toEqual(['well', '1, the newest 400 days old']);
  // A note on a lot counts as much as a cook.
  const database = openDatabase(join(folder, 'umberpan.sqlite'));
  const written = new Date(wholeMs + dayMs).toISOString();
  database.exec(`INSERT INTO plan VALUES ('11111111-1111-4111-8111-111111111111', 'Dark', NULL, '{}', '${written}')`);
  database.close();
  expect((await state(wholeMs + 1.5 * dayMs))[0]).toBe('mind');
  expect(await state(wholeMs + 40 * dayMs)).toEqual([
    'wrong',
    `1, the newest 40 days old; something was written since, last on ${written.slice(0, 10)}`,
  ]);
  backUpAt(wholeMs + 2 * dayMs);
  expect((await state(wholeMs + 40 * dayMs))[0]).toBe('well');
  rmSync(backups, { recursive: true });
  expect((await state(wholeMs + 40 * dayMs))[0]).toBe('wrong');
});

it('finds a clock that was set back behind what was already written', async () => {
  const { folder } = await cookedFolder();
  expect(bad(await examine(folder, port, Date.UTC(2020, 0, 1))).map(({ name }) => name)).toContain('Clock');
});

it('tells Umberpan at the port from another program and from nobody', async () => {
  const { address } = await listeningServer(scratchFolder());
  const own = Number(new URL(address).port);
  expect(named(await examine(scratchFolder(), own, later), 'Port')).toMatchObject({
    state: 'well',
    found: expect.stringContaining('listens'),
  });
  const other = createServer((socket) => socket.end('hello\n'));
  await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
  onTestFinished(() => void other.close());
  const taken = (other.address() as { port: number }).port;
  expect(named(await examine(scratchFolder(), taken, later), 'Port')).toMatchObject({ state: 'wrong' });
});

it('knows its own encrypted server, by the authority of the data folder', async () => {
  const folder = scratchFolder();
  const now = new Date();
  const authority = await makeAuthority(folder, now);
  const tls = await certificateFor(authority, ['localhost'], now);
  const { address } = await listeningServer(scratchFolder(), { tls });
  const own = Number(new URL(address).port);
  const state = async (data: string) => named(await examine(data, own, now.getTime()), 'Port')?.state;
  expect(await state(folder)).toBe('well');
  // To who does not know that authority it is any program.
  expect(await state(scratchFolder())).toBe('wrong');
});

it('finds an authority that ends soon, and a key that others can read', async () => {
  const folder = scratchFolder();
  await makeAuthority(folder, new Date(Date.UTC(2026, 0, 1)));
  const state = async (nowMs: number) => named(await examine(folder, port, nowMs), 'Certificate')?.state;
  expect(await state(Date.UTC(2027, 0, 1))).toBe('well');
  expect(await state(Date.UTC(2035, 11, 25))).toBe('wrong');
  chmodSync(join(folder, 'trust', 'authority.key'), 0o644);
  expect(await state(Date.UTC(2027, 0, 1))).toBe('wrong');
});

it.each([
  ['18.20.0', 'wrong'],
  ['20.18.9', 'wrong'],
  ['20.19.0', 'well'],
  ['24.1.0', 'well'],
])('Node %s: %s', (version, state) => {
  expect(nodeFinding(version).state).toBe(state);
});

it('has nothing against a machine that was never started on', async () => {
  const folder = join(scratchFolder(), 'not', 'there');
  expect(bad(await examine(folder, port, later))).toEqual([]);
  mkdirSync(folder, { recursive: true });
});
