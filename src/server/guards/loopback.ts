/** This machine, seen from itself. */

/** Names by which a page on this machine reaches this server. */
export const loopbackHosts = ['localhost', '127.0.0.1', '[::1]'];

/** @param address of a socket's other end; an IPv4 address may come as part of an IPv6 one (RFC 4291, 2.5.5.2) */
export function isLoopbackAddress(address: string | undefined): boolean {
  return address !== undefined && /^(::ffff:)?127\.\d+\.\d+\.\d+$|^::1$/.test(address);
}

/** @param host a Host header, with or without a port */
export function isLoopbackHost(host: string | undefined): boolean {
  return host !== undefined && loopbackHosts.includes(host.toLowerCase().replace(/:\d+$/, ''));
}
