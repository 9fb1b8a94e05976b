// The browser tests as a phone on the home network runs them: over plain http, by a name of the network, let in by a code. `UMBERPAN_TESTS=lan` asks for that.
import type { DeviceRole } from '../../src/api/device.ts';

export const onLan = process.env['UMBERPAN_TESTS'] === 'lan';

/** A name that stands for this machine as the network knows it. */
const name = 'pan.test';
export const lanServerFlags = ['--lan', '--name', name];
export const lanBrowserFlags = [`--host-resolver-rules=MAP ${name} 127.0.0.1`];

/** The same server, asked from the network. @param address as this machine asks it */
export function fromNetwork(address: string): string {
  const { port } = new URL(address);
  return `http://${name}:${port}/`;
}

/** Lets a device in by the way that a person would take; gives the token that it was told. */
export async function passTo(address: string, role: DeviceRole): Promise<string> {
  const { code } = await told(`${address}api/invitations`, { role });
  const { token } = await told(`${address}api/pairing`, { code, name: `The ${role}` });
  return token as string;
}

async function told(address: string, body: object): Promise<Record<string, unknown>> {
  const headers = { 'content-type': 'application/json' };
  const answer = await fetch(address, { method: 'POST', headers, body: JSON.stringify(body) });
  if (!answer.ok) throw new Error(`${address}: ${await answer.text()}`);
  return (await answer.json()) as Record<string, unknown>;
}
