import { X509Certificate } from 'node:crypto';
import { chmodSync, readFileSync, statSync } from 'node:fs';
import { request } from 'node:https';
import { dirname, join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { scratchFolder } from '../../../test/testServer.ts';
import { buildServer } from '../server.ts';
import { openStore } from '../store/store.ts';
import { certificateFor, makeAuthority, readAuthority } from './trust.ts';

const now = new Date();

it('is made once, for its owner alone to read', async () => {
  const data = scratchFolder();
  expect(readAuthority(data)).toBeUndefined();
  const made = await makeAuthority(data, now);
  expect(await makeAuthority(data, now)).toEqual(made);
  expect(new X509Certificate(readFileSync(made.file)).ca).toBe(true);
  const key = join(dirname(made.file), 'authority.key');
  expect(statSync(key).mode & 0o777).toBe(0o600);
  expect(statSync(dirname(key)).mode & 0o777).toBe(0o700);
  chmodSync(key, 0o644);
  expect(() => readAuthority(data)).toThrow(`chmod 600 ${key}`);
});

it('vouches for the names and addresses of the server, for less than 398 days, and for no authority below it', async () => {
  const authority = await makeAuthority(scratchFolder(), now);
  const { cert } = await certificateFor(authority, ['localhost', '[::1]', '192.168.1.20', 'pan.home'], now);
  const leaf = new X509Certificate(cert);
  expect(leaf.verify(new X509Certificate(authority.cert).publicKey)).toBe(true);
  for (const name of ['localhost', 'pan.home']) expect(leaf.checkHost(name)).toBe(name);
  for (const address of ['192.168.1.20', '::1']) expect(leaf.checkIP(address)).toBe(address);
  expect(leaf.checkHost('evil.test')).toBeUndefined();
  expect(leaf.ca).toBe(false);
  const days = (Date.parse(leaf.validTo) - Date.parse(leaf.validFrom)) / 86_400_000;
  expect(days).toBeLessThanOrEqual(397);
});

it('is believed by a client that trusts it, and by no other', async () => {
  const data = scratchFolder();
  const authority = await makeAuthority(data, now);
  const store = await openStore(data);
  const tls = await certificateFor(authority, ['localhost'], now);
  const app = await buildServer({ store, pages: data, tls, authority: authority.cert });
  onTestFinished(async () => {
    await app.close();
    await store.close();
  });
  const address = (await app.listen({ host: '127.0.0.1', port: 0 })).replace('127.0.0.1', 'localhost');
  const ask = (ca?: string) =>
    new Promise<number | string | undefined>((resolve) => {
      const asked = request(`${address}/api/authority`, { ...(ca && { ca }), family: 4 }, (answer) => {
        answer.resume();
        resolve(answer.statusCode);
      });
      asked.on('error', (error: NodeJS.ErrnoException) => resolve(error.code)).end();
    });
  expect(await ask(authority.cert)).toBe(200);
  expect(await ask()).toMatch(/SELF_SIGNED|UNABLE_TO_VERIFY/);
});
