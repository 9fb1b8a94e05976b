/**
 * An authority of the home's own, by which phones that trust it take this server for what it is. It is made only when asked
 * for, vouches for names of the home alone, and is installed nowhere by itself.
 */
import { createPrivateKey, KeyObject, webcrypto, X509Certificate } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { isIP } from 'node:net';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { homeEndings, homeRanges, isOfHome, withoutBrackets } from './homeNames.ts';

export interface Authority {
  readonly key: string;
  readonly cert: string;
  /** Where the certificate is kept. */
  readonly file: string;
  /** SHA-256 of the certificate, in pairs of hexadecimal digits: what a phone shows, too. */
  readonly fingerprint: string;
  readonly ends: Date;
}

const dayMs = 86_400_000;
const authorityDays = 3650;
/** Browsers take no certificate of a server that counts longer than 398 days (CA/Browser Forum ballot SC31, from memory). */
const serverDays = 397;
const ec = { name: 'ECDSA', namedCurve: 'P-256', hash: 'SHA-256' } as const;
/** Of the name constraints, RFC 5280. */
const constraintsOid = '2.5.29.30';

const filesIn = (folder: string) => ({
  folder: join(folder, 'trust'),
  cert: join(folder, 'trust', 'authority.crt'),
  key: join(folder, 'trust', 'authority.key'),
});

/**
 * Makes the authority of a data folder, unless there is one.
 *
 * @param names further names that this machine is reached by; its own is one
 */
export async function makeAuthority(data: string, now: Date, names: readonly string[] = []): Promise<Authority> {
  const there = readAuthority(data);
  if (there) return there;
  const files = filesIn(data);
  mkdirSync(files.folder, { recursive: true, mode: 0o700 });
  const x509 = await import('@peculiar/x509');
  const keys = await webcrypto.subtle.generateKey(ec, true, ['sign', 'verify']);
  const made = await x509.X509CertificateGenerator.createSelfSigned({
    name: `CN=Umberpan at ${hostname()}`,
    keys,
    signingAlgorithm: ec,
    ...within(now, authorityDays),
    extensions: [
      new x509.BasicConstraintsExtension(true, 0, true),
      new x509.KeyUsagesExtension(x509.KeyUsageFlags.keyCertSign | x509.KeyUsageFlags.cRLSign, true),
      new x509.Extension(constraintsOid, true, await constraintsTo([...homeEndings, hostname(), ...names])),
      await x509.SubjectKeyIdentifierExtension.create(keys.publicKey),
    ],
  });
  writeFileSync(files.key, pemOf(keys.privateKey), { mode: 0o600, flag: 'wx' });
  writeFileSync(files.cert, made.toString('pem'), { mode: 0o644 });
  return readAuthority(data) as Authority;
}

/**
 * @returns undefined when none was made
 * @throws Error when others on this machine can read the key: whoever has it can pass for this server to phones that trust it
 */
export function readAuthority(data: string): Authority | undefined {
  const files = filesIn(data);
  if (!existsSync(files.key) || !existsSync(files.cert)) return undefined;
  if (process.platform !== 'win32' && (statSync(files.key).mode & 0o077) !== 0)
    throw new Error(`${files.key} can be read by others on this machine. Run: chmod 600 ${files.key}`);
  const cert = readFileSync(files.cert, 'utf8');
  const { fingerprint256, validTo } = new X509Certificate(cert);
  const ends = new Date(validTo);
  return { key: readFileSync(files.key, 'utf8'), cert, file: files.cert, fingerprint: fingerprint256, ends };
}

/** Key and certificate, for good; devices that trust it have to be told by hand. @returns whether there was one */
export function removeAuthority(data: string): boolean {
  const { folder } = filesIn(data);
  const there = existsSync(folder);
  rmSync(folder, { recursive: true, force: true });
  return there;
}

/**
 * A certificate for a server that is reached by these names and addresses; made anew at each start. With one that the
 * authority may not vouch for, browsers would refuse all of it: those are left out.
 */
export async function certificateFor(authority: Authority, names: readonly string[], now: Date) {
  const x509 = await import('@peculiar/x509');
  const issuer = new x509.X509Certificate(authority.cert);
  const endings = await endingsOf(authority);
  const altNames = [...new Set(names)]
    .filter((name) => endings === undefined || isOfHome(name, endings))
    .map(withoutBrackets)
    .map((name) => ({ type: isIP(name) ? ('ip' as const) : ('dns' as const), value: name }));
  const keys = await webcrypto.subtle.generateKey(ec, true, ['sign', 'verify']);
  const made = await x509.X509CertificateGenerator.create({
    subject: 'CN=Umberpan',
    issuer: issuer.subject,
    publicKey: keys.publicKey,
    signingKey: await signingKey(authority.key),
    signingAlgorithm: ec,
    ...within(now, serverDays),
    extensions: [
      new x509.BasicConstraintsExtension(false, undefined, true),
      new x509.KeyUsagesExtension(x509.KeyUsageFlags.digitalSignature, true),
      new x509.ExtendedKeyUsageExtension([x509.ExtendedKeyUsage.serverAuth]),
      new x509.SubjectAlternativeNameExtension(altNames),
      await x509.AuthorityKeyIdentifierExtension.create(issuer.publicKey),
    ],
  });
  return { key: pemOf(keys.privateKey), cert: `${made.toString('pem')}\n${authority.cert}` };
}

/** Which names the authority may vouch for; undefined for one that was made without constraints. */
export async function endingsOf({ cert }: Authority): Promise<string[] | undefined> {
  const { AsnConvert, NameConstraints, X509Certificate: Parsed } = await asn1();
  const extension = new Parsed(cert).getExtension(constraintsOid);
  if (!extension) return undefined;
  const { permittedSubtrees = [] } = AsnConvert.parse(extension.value, NameConstraints);
  return [...permittedSubtrees].flatMap(({ base }) => base.dNSName ?? []);
}

async function constraintsTo(endings: readonly string[]): Promise<ArrayBuffer> {
  const { AsnConvert, GeneralName, GeneralSubtree, GeneralSubtrees, NameConstraints } = await asn1();
  const permitted = [
    ...[...new Set(endings)].map((dNSName) => new GeneralName({ dNSName })),
    ...homeRanges.map(([address, bits]) => new GeneralName({ iPAddress: `${address}/${bits}` })),
  ];
  const permittedSubtrees = new GeneralSubtrees(permitted.map((base) => new GeneralSubtree({ base })));
  return AsnConvert.serialize(new NameConstraints({ permittedSubtrees }));
}

/** Loaded by those who use an authority alone. */
async function asn1() {
  const [schema, x509, whole] = await Promise.all([
    import('@peculiar/asn1-schema'),
    import('@peculiar/asn1-x509'),
    import('@peculiar/x509'),
  ]);
  return { ...x509, AsnConvert: schema.AsnConvert, X509Certificate: whole.X509Certificate };
}

function signingKey(pem: string) {
  const der = createPrivateKey(pem).export({ type: 'pkcs8', format: 'der' });
  return webcrypto.subtle.importKey('pkcs8', der, ec, false, ['sign']);
}

function pemOf(key: webcrypto.CryptoKey): string {
  return KeyObject.from(key).export({ type: 'pkcs8', format: 'pem' }).toString();
}

/** From a day before, for clocks that are behind. */
function within(now: Date, days: number) {
  return { notBefore: new Date(now.getTime() - dayMs), notAfter: new Date(now.getTime() + (days - 1) * dayMs) };
}
