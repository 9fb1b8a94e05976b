import { execFile } from 'node:child_process';
import { request } from 'node:http';
import { expect, it, onTestFinished } from 'vitest';
import { scratchFolder } from '../testServer.ts';
import { cli, startBuiltServer } from './builtServer.ts';

function umberpan(...args: string[]): Promise<{ code: number; stdout: string; stderr: string }> {
  return new Promise((resolve) => {
    execFile(process.execPath, [cli, ...args], (error, stdout, stderr) =>
      resolve({ code: Number(error?.code ?? 0), stdout, stderr }),
    );
  });
}

it('serve answers, and ends in order', async () => {
  const server = await startBuiltServer(scratchFolder());
  expect((await fetch(`${server.address}api/health`)).status).toBe(200);
  expect(await server.end('SIGTERM')).toEqual({ code: 0, stderr: '' });
});

it('a second serve on the same data says where the first listens', async () => {
  const data = scratchFolder();
  const server = await startBuiltServer(data);
  onTestFinished(async () => void (await server.end('SIGTERM')));
  const second = await umberpan('serve', '--port', '0', '--data', data);
  expect(second.code).toBe(1);
  expect(second.stderr).toContain(`listens at ${server.address}`);
});

it('a port that is taken is named', async () => {
  const server = await startBuiltServer(scratchFolder());
  onTestFinished(async () => void (await server.end('SIGTERM')));
  const { port } = new URL(server.address);
  const second = await umberpan('serve', '--port', port, '--data', scratchFolder());
  expect(second).toMatchObject({
    code: 1,
    stderr: `Port ${port} is taken by another program; choose another with --port.\n`,
  });
});

it('a page that rebinds its name to this server gets nothing', async () => {
  const server = await startBuiltServer(scratchFolder());
  onTestFinished(async () => void (await server.end('SIGTERM')));
  const port = new URL(server.address).port;
  const status = await new Promise((resolve, reject) => {
    request(`${server.address}api/kits`, { headers: { host: `evil.test:${port}` } }, (answer) => {
      answer.resume();
      resolve(answer.statusCode);
    })
      .on('error', reject)
      .end();
  });
  expect(status).toBe(421);
});

it.each([
  [['--help'], 0],
  [['serve', '--help'], 0],
  [['--version'], 0],
  [['serv'], 2],
  [['serve', '--port', 'x'], 2],
  [[], 2],
])('umberpan %j ends with %i', async (args, code) => {
  expect((await umberpan(...args)).code).toBe(code);
});
