import { spawnSync } from 'node:child_process';
import { createPrivateKey, webcrypto, X509Certificate } from 'node:crypto';
import { chmodSync, existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { request } from 'node:https';
import { dirname, join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { needs } from '../../../test/peers.ts';
import { scratchFolder } from '../../../test/testServer.ts';
import { buildServer } from '../server.ts';
import { openStore } from '../store/store.ts';
import { homeEndings, isOfHome } from './homeNames.ts';
import { type Authority, certificateFor, makeAuthority, readAuthority, removeAuthority } from './trust.ts';

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
  const authority = await makeAuthority(scratchFolder(), now, ['pan.home']);
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

it('may vouch for the home alone: what openssl makes of certificates that its key has signed', async (context) => {
  needs('openssl', context);
  const data = scratchFolder();
  const authority = await makeAuthority(data, now, ['pan.home']);
  const verdict = (cert: string) => {
    const leaf = join(data, 'leaf.crt');
    writeFileSync(leaf, cert);
    const { status, stderr } = spawnSync('openssl', ['verify', '-x509_strict', '-CAfile', authority.file, leaf]);
    return status === 0 ? 'ok' : /permitted subtree violation/.test(String(stderr)) ? 'not permitted' : String(stderr);
  };
  /** As somebody would who has the key: whatever it names. */
  const signed = async (name: string) => {
    const unbound = { ...authority, cert: (await withoutConstraints(authority)).toString('pem') };
    return (await certificateFor(unbound, [name], now)).cert;
  };
  for (const name of ['localhost', 'kitchen.local', 'pan.home', '192.168.1.20', '10.1.2.3', '172.31.0.1', 'fd00::1'])
    expect([name, verdict(await signed(name))]).toEqual([name, 'ok']);
  for (const name of ['example.org', 'local.example.org', 'notpan.home', '192.0.2.1', '172.32.0.1', '2001:db8::1'])
    expect([name, verdict(await signed(name))]).toEqual([name, 'not permitted']);
  // The server itself leaves out what would spoil the whole certificate, such as an address of the internet.
  const { cert } = await certificateFor(authority, ['localhost', '[2001:db8::1]', 'example.org'], now);
  expect(verdict(cert)).toBe('ok');
  expect(new X509Certificate(cert).subjectAltName).toBe('DNS:localhost');
});

/** The same authority as one made before there were constraints. */
async function withoutConstraints({ key, cert }: Authority) {
  const x509 = await import('@peculiar/x509');
  const { subject, extensions, publicKey, notBefore, notAfter } = new x509.X509Certificate(cert);
  const der = createPrivateKey(key).export({ type: 'pkcs8', format: 'der' });
  const ec = { name: 'ECDSA', namedCurve: 'P-256', hash: 'SHA-256' };
  return x509.X509CertificateGenerator.create({
    subject,
    issuer: subject,
    publicKey,
    signingKey: await webcrypto.subtle.importKey('pkcs8', der, ec, false, ['sign']),
    signingAlgorithm: ec,
    notBefore,
    notAfter,
    extensions: extensions.filter(({ type }) => type !== '2.5.29.30'),
  });
}

it('is taken away with its key', async () => {
  const data = scratchFolder();
  const { file } = await makeAuthority(data, now);
  expect(removeAuthority(data)).toBe(true);
  expect(existsSync(dirname(file))).toBe(false);
  expect(removeAuthority(data)).toBe(false);
});

it.each([
  ['kitchen.local', true],
  ['Kitchen.LOCAL', true],
  ['[fe80::1]', true],
  ['127.0.0.1', true],
  ['local.evil.test', false],
  ['8.8.8.8', false],
])('%s is of the home: %s', (name, is) => {
  expect(isOfHome(name, homeEndings)).toBe(is);
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
