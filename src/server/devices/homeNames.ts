/**
 * What the home's own authority may vouch for, as a constraint in its certificate (RFC 5280, section 4.2.1.10): names and
 * addresses that no site of the internet has. Its key, in wrong hands, passes for nothing else.
 */
import { BlockList, isIP } from 'node:net';

/** Endings that are no site's: RFC 6762 (.local), RFC 6761 (localhost), RFC 8375 (home.arpa). */
export const homeEndings = ['local', 'localhost', 'home.arpa'] as const;

/** Loopback, link-local and private addresses: RFC 1122, 3927, 1918; RFC 4291 and 4193. */
export const homeRanges = [
  ['127.0.0.0', 8],
  ['169.254.0.0', 16],
  ['10.0.0.0', 8],
  ['172.16.0.0', 12],
  ['192.168.0.0', 16],
  ['::1', 128],
  ['fe80::', 10],
  ['fc00::', 7],
] as const;

const home = new BlockList();
for (const [address, bits] of homeRanges) home.addSubnet(address, bits, familyOf(address));

/**
 * @param name a name or an address, as a Host header has it
 * @param endings which it may have besides being an address of the home
 */
export function isOfHome(name: string, endings: readonly string[]): boolean {
  const bare = withoutBrackets(name);
  if (isIP(bare)) return home.check(bare, familyOf(bare));
  return endings.some((ending) => `.${bare.toLowerCase()}`.endsWith(`.${ending.toLowerCase()}`));
}

export const withoutBrackets = (name: string): string => name.replace(/^\[|\]$/g, '');

function familyOf(address: string): 'ipv4' | 'ipv6' {
  return isIP(address) === 4 ? 'ipv4' : 'ipv6';
}
