/** The names and addresses by which this machine is reached. */
import { hostname, type NetworkInterfaceInfo, networkInterfaces } from 'node:os';

/** An address that stands for all of the machine's. */
export function isEvery(host: string): boolean {
  return host === '0.0.0.0' || host === '::';
}

function isOnlyThisMachine(host: string): boolean {
  return host === 'localhost' || host === '::1' || host.startsWith('127.');
}

export function bracketed(address: string): string {
  return address.includes(':') ? `[${address}]` : address;
}

/** By which a server that listens at `host` is asked, as a Host header says it. */
export function namesFor(host: string, own = networkInterfaces()): string[] {
  if (!isEvery(host)) return [bracketed(host)];
  return [hostname(), `${hostname()}.local`, ...all(own).map(({ address }) => bracketed(address))];
}

/**
 * Those that a phone at home would use: first addresses of the home network, which work where no name does; then one's own names
 * and the machine's, which stay when the address changes.
 */
export function namesOnNetwork(host: string, given: readonly string[], own = networkInterfaces()): string[] {
  if (isOnlyThisMachine(host)) return [];
  if (!isEvery(host)) return [bracketed(host), ...given];
  const addresses = all(own).filter(({ internal, family }) => !internal && family === 'IPv4');
  return [...addresses.map(({ address }) => address), ...given, `${hostname()}.local`];
}

/** Where thermometers reach a broker of this machine. @param addresses where devices reach the server itself */
export function brokerAddresses(
  { port, encrypted }: { readonly port: number; readonly encrypted: boolean },
  addresses: readonly string[],
): string[] {
  const names = addresses.length > 0 ? addresses.map((address) => new URL(address).hostname) : ['127.0.0.1'];
  return names.map((name) => `${encrypted ? 'mqtts' : 'mqtt'}://${name}:${port}`);
}

function all(own: NodeJS.Dict<NetworkInterfaceInfo[]>): NetworkInterfaceInfo[] {
  return Object.values(own).flatMap((addresses) => addresses ?? []);
}
