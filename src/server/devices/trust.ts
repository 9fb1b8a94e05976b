/**
 * An authority of the home's own, by which phones that trust it take this server for what it is. It is made only when asked
 * for, and installed nowhere by itself.
 */
import { X509Certificate } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { isIP } from 'node:net';
import { hostname } from 'node:os';
import { join } from 'node:path';

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
const ec = { keyType: 'ec', curve: 'P-256', algorithm: 'sha256' } as const;

const filesIn = (folder: string) => ({
  folder: join(folder, 'trust'),
  cert: join(folder, 'trust', 'authority.crt'),
  key: join(folder, 'trust', 'authority.key'),
});

/** Makes the authority of a data folder, unless there is one. */
export async function makeAuthority(data: string, now: Date): Promise<Authority> {
  const there = readAuthority(data);
  if (there) return there;
  const files = filesIn(data);
  mkdirSync(files.folder, { recursive: true, mode: 0o700 });
  const { generate } = await import('selfsigned');
  const made = await generate([{ name: 'commonName', value: `Umberpan at ${hostname()}` }], {
    ...ec,
    ...within(now, authorityDays),
    extensions: [
      { name: 'basicConstraints', cA: true, pathLenConstraint: 0, critical: true },
      { name: 'keyUsage', keyCertSign: true, cRLSign: true, critical: true },
    ],
  });
  writeFileSync(files.key, made.private, { mode: 0o600, flag: 'wx' });
  writeFileSync(files.cert, made.cert, { mode: 0o644 });
  return readAuthority(data) as Authority;
}

/**
 * @returns undefined when none was made
 * @throws Error when others on this machine can read the key: whoever has it can pass for any site to phones that trust it
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

/** A certificate for a server that is reached by these names and addresses; made anew at each start. */
export async function certificateFor(authority: Authority, names: readonly string[], now: Date) {
  const altNames = [...new Set(names)].map((name) => {
    const bare = name.replace(/^\[|\]$/g, '');
    return isIP(bare) ? { type: 7 as const, ip: bare } : { type: 2 as const, value: bare };
  });
  const { generate } = await import('selfsigned');
  const { private: key, cert } = await generate([{ name: 'commonName', value: 'Umberpan' }], {
    ...ec,
    ...within(now, serverDays),
    ca: { key: authority.key, cert: authority.cert },
    extensions: [
      { name: 'basicConstraints', cA: false, critical: true },
      { name: 'keyUsage', digitalSignature: true, critical: true },
      { name: 'extKeyUsage', serverAuth: true },
      { name: 'subjectAltName', altNames },
    ],
  });
  return { key, cert: `${cert}\n${authority.cert}` };
}

/** From a day before, for clocks that are behind. */
function within(now: Date, days: number) {
  return { notBeforeDate: new Date(now.getTime() - dayMs), notAfterDate: new Date(now.getTime() + (days - 1) * dayMs) };
}
