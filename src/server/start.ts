/** Starts the server on a data folder and stops it again, leaving the store closed. */

import type { DeviceRole } from '../api/device.ts';
import { damageOfNewestCook } from './cooking/damage.ts';
import { steadyClock } from './cooking/steadyClock.ts';
import { bracketed, brokerAddresses, isEvery, namesFor, namesOnNetwork } from './devices/addresses.ts';
import { isOfHome } from './devices/homeNames.ts';
import { openInvitations } from './devices/invitations.ts';
import { type Authority, certificateFor, endingsOf, readAuthority } from './devices/trust.ts';
import { loopbackHosts } from './guards/loopback.ts';
import type { OwnBroker } from './inputs/ownBroker.ts';
import { pairingLink } from './routes/devices.ts';
import { buildServer } from './server.ts';
import { allDevices } from './store/devices.ts';
import { openStore } from './store/store.ts';

export interface StartOptions {
  readonly data: string;
  readonly host: string;
  /** 0 lets the system choose. */
  readonly port: number;
  readonly names: readonly string[];
  /** By the authority in the data folder. */
  readonly https?: boolean;
  /** Port of an MQTT broker of its own, at the same host. */
  readonly broker?: number | undefined;
}

export interface Running {
  /** Where to point a browser on this machine. */
  readonly address: string;
  /** Where devices on the network reach it, the likeliest first. */
  readonly addresses: readonly string[];
  /** Where thermometers reach its own MQTT broker; none without. */
  readonly broker: readonly string[];
  /** Whether somebody with all rights is let in yet. */
  readonly hasKeeper: boolean;
  /** A link that lets one device in. */
  invite(role: DeviceRole): string | undefined;
  stop(): Promise<void>;
}

export async function startServer({ data, host, port, names, https = false, broker }: StartOptions): Promise<Running> {
  const store = await openStore(data);
  let close = (): Promise<void> => store.close();
  try {
    const known = [...names, ...namesFor(host)];
    const clock = steadyClock();
    const invitations = openInvitations(clock.nowMs);
    const authority = readAuthority(data);
    if (https && !authority) throw new Error('There is no authority to vouch for it yet. Run: umberpan trust');
    if (https && authority) await refuseUnvouched(authority, names);
    let addresses: readonly string[] = [];
    let own: OwnBroker | undefined;
    const app = await buildServer({
      store,
      clock,
      invitations,
      names: known,
      addresses: () => addresses,
      authority: authority?.cert,
      broker: broker === undefined ? undefined : { host, port: broker, opened: (opened) => (own = opened) },
      logger: { level: 'warn', stream: process.stderr },
      ...(https && authority && { tls: await certificateFor(authority, [...loopbackHosts, ...known], new Date()) }),
    });
    app.addHook('onClose', () => store.close());
    // From here on the app has clocks of its own, which would keep a process alive that failed to listen.
    close = () => app.close();
    const damage = await damageOfNewestCook(store.db);
    if (damage) app.log.warn(damage);
    await app.listen({ host, port });
    const bound = app.server.address();
    const boundPort = bound && typeof bound === 'object' ? bound.port : port;
    const addressOf = (name: string) => `${https ? 'https' : 'http'}://${name}:${boundPort}/`;
    const address = addressOf(isEvery(host) ? 'localhost' : bracketed(host));
    addresses = namesOnNetwork(host, names).map(addressOf);
    store.tellAddress(address);
    return {
      address,
      addresses,
      broker: own ? brokerAddresses(own, addresses) : [],
      hasKeeper: (await allDevices(store.db)).some(({ role }) => role === 'keeper'),
      invite: (role) => addresses[0] && pairingLink(addresses[0], invitations.invite({ role, hours: null }).code),
      stop: close,
    };
  } catch (error) {
    await close();
    throw isPortTaken(error)
      ? new Error(
          `Port ${error.port} is taken by another program; choose another with ${error.port === broker ? '--broker' : '--port'}.`,
        )
      : error;
  }
}

/** A name that was asked for by hand, and that no browser would find in the certificate. */
async function refuseUnvouched(authority: Authority, names: readonly string[]) {
  const endings = await endingsOf(authority);
  const outside = names.filter((name) => endings && !isOfHome(name, endings));
  if (outside.length === 0) return;
  const asked = outside.map((name) => `--name ${name}`).join(' ');
  throw new Error(
    `The authority may not vouch for ${outside.join(', ')}. Make another: umberpan trust --remove, then umberpan trust ${asked}`,
  );
}

function isPortTaken(error: unknown): error is Error & { readonly port: number } {
  return error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
}
