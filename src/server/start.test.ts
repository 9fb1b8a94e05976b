// Who reaches a server that was started for this machine alone, and one that was started for the network.
import { networkInterfaces } from 'node:os';
import { expect, it, onTestFinished } from 'vitest';
import { scratchFolder } from '../../test/testServer.ts';
import { makeAuthority } from './devices/trust.ts';
import { startServer } from './start.ts';

const ownAddress = Object.values(networkInterfaces())
  .flatMap((addresses) => addresses ?? [])
  .find(({ internal, family }) => !internal && family === 'IPv4')?.address;

async function start(host: string) {
  const running = await startServer({ data: scratchFolder(), host, port: 0, names: ['pan.home'] });
  onTestFinished(running.stop);
  return { ...running, port: new URL(running.address).port };
}

it.skipIf(!ownAddress)('this machine alone: nobody reaches it at the address of the network', async () => {
  const { port, address, addresses, invite } = await start('127.0.0.1');
  expect((await fetch(`${address}api/kits`)).status).toBe(200);
  await expect(fetch(`http://${ownAddress}:${port}/api/health`)).rejects.toThrow();
  expect(addresses).toEqual([]);
  expect(invite('cook')).toBeUndefined();
});

it.skipIf(!ownAddress)(
  'the network: pages for everybody, data for who was let in, by a link that leads there',
  async () => {
    const { port, address, addresses, hasKeeper, invite } = await start('0.0.0.0');
    expect(addresses[0]).toBe(`http://${ownAddress}:${port}/`);
    expect(addresses).toContain(`http://pan.home:${port}/`);
    expect(hasKeeper).toBe(false);
    const network = `http://${ownAddress}:${port}/`;
    // A connection from this very machine, but by a name of the network.
    expect((await fetch(`${network}api/kits`)).status).toBe(401);
    expect((await fetch(`${address}api/kits`)).status).toBe(200);
    const [, code] = invite('keeper')?.split('/pair#') ?? [];
    const body = JSON.stringify({ code, name: 'Phone' });
    const headers = { 'content-type': 'application/json' };
    const paired = await fetch(`${network}api/pairing`, { method: 'POST', headers, body });
    const { token } = (await paired.json()) as { token: string };
    const asked = await fetch(`${network}api/devices`, { headers: { authorization: `Bearer ${token}` } });
    expect(asked.status).toBe(200);
  },
);

it('https wants an authority, and says which command makes it', async () => {
  const options = { data: scratchFolder(), host: '127.0.0.1', port: 0, names: [], https: true };
  await expect(startServer(options)).rejects.toThrow('umberpan trust');
});

it('https under a name that the authority may not vouch for is refused, with the commands that make another', async () => {
  const data = scratchFolder();
  await makeAuthority(data, new Date());
  const options = { data, host: '127.0.0.1', port: 0, names: ['pan.home'], https: true };
  await expect(startServer(options)).rejects.toThrow('umberpan trust --name pan.home');
});

it('names the port that is taken, and the option that chooses another', async () => {
  const { port } = await start('127.0.0.1');
  const options = { data: scratchFolder(), host: '127.0.0.1', port: 0, names: [], broker: Number(port) };
  await expect(startServer(options)).rejects.toThrow(
    `Port ${port} is taken by another program; choose another with --broker.`,
  );
});
