// Nothing leaves the house: neither the server nor the page asks for anything elsewhere.
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { needs } from '../peers.ts';
import { scratchFolder } from '../testServer.ts';
import { startBuiltServer } from './builtServer.ts';
import { noBrowser, pages, planned } from './openPage.ts';

/** Where a process and its threads connected to, by the system's own account; sockets of the file system are left out. */
function connections(account: string): string[] {
  return account.split('\n').flatMap((line) => {
    const [, family, rest = ''] = /connect\(\d+, \{sa_family=(AF_\w+)(.*)/.exec(line) ?? [];
    if (family === undefined || family === 'AF_UNIX') return [];
    return (
      /inet_addr\("([^"]+)"|inet_pton\(AF_INET6, "([^"]+)"/.exec(rest)?.slice(1).find(Boolean) ?? `${family}${rest}`
    );
  });
}

const isLoopback = (address: string) => /^127\.|^::1$|^::ffff:127\./.test(address);

it('a call to another machine would be seen in such an account', () => {
  const account = [
    '11 connect(17, {sa_family=AF_UNIX, sun_path="/run/nscd"}, 110) = -1',
    '11 connect(18, {sa_family=AF_INET, sin_port=htons(80), sin_addr=inet_addr("127.0.0.1")}, 16) = 0',
    '12 connect(19, {sa_family=AF_INET, sin_port=htons(443), sin_addr=inet_addr("192.0.2.7")}, 16) = -1',
    '12 connect(20, {sa_family=AF_INET6, sin6_port=htons(443), sin6_flowinfo=htonl(0), inet_pton(AF_INET6, "2001:db8::7", &sin6_addr)}, 28) = 0',
  ].join('\n');
  expect(connections(account).filter((one) => !isLoopback(one))).toEqual(['192.0.2.7', '2001:db8::7']);
});

describe.skipIf(noBrowser)('a server with pages open', () => {
  const open = pages();

  it('connects to nothing beyond this machine, and its pages to nothing but it', async (context) => {
    needs('strace', context);
    const traces = mayTrace();
    context.skip(!traces, 'this system lets no process be traced');
    const account = join(scratchFolder(), 'connections');
    // Signals go on to the server.
    const strace = ['strace', '-f', '-I2', '-e', 'trace=connect', '-o', account];
    const server = await startBuiltServer(scratchFolder(), 0, undefined, strace);
    onTestFinished(async () => void (await server.end('SIGTERM')));
    const { page } = await open({ on: server });
    const asked = new Set<string>();
    page.on('request', (request) => asked.add(new URL(request.url()).host));
    await planned(page);
    await page.getByRole('button', { name: 'Save plan' }).click();
    await page.getByText(/^Saved “/).waitFor();
    for (const place of ['stove', 'stove/cook', 'shelf', 'glass', 'book', 'kit', 'care', 'guide', 'devices']) {
      await page.goto(`/${place}`);
      await page.getByRole('heading', { level: 1 }).first().waitFor();
    }
    await server.end('SIGTERM');
    expect([...asked]).toEqual([new URL(page.url()).host]);
    expect(connections(readFileSync(account, 'utf8')).filter((one) => !isLoopback(one))).toEqual([]);
  }, 120_000);
});

function mayTrace(): boolean {
  try {
    execFileSync('strace', ['-f', '-o', '/dev/null', 'true']);
    return true;
  } catch {
    return false;
  }
}
