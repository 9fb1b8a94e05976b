/** Names for events: UUIDs of version 7 (RFC 9562, section 5.7), which a page can make without a secure context. */

/**
 * @param unixMs ms since 1970, 0 to 2^48 - 1
 * @param random ten random bytes
 */
export function eventId(unixMs: number, random: Uint8Array): string {
  if (!(unixMs >= 0 && unixMs < 2 ** 48)) throw new RangeError(`time is ${unixMs} ms; allowed: 0 to 2^48 - 1`);
  if (random.length !== 10) throw new RangeError(`random is ${random.length} bytes; allowed: 10`);
  const hex = (value: number, digits: number) => value.toString(16).padStart(digits, '0');
  const [a, b, c, ...rest] = random;
  const time = hex(Math.floor(unixMs), 12);
  const version = `7${hex(a & 0x0f, 1)}${hex(b, 2)}`;
  const variant = hex(0x80 | (c & 0x3f), 2) + hex(rest[0], 2);
  const node = rest.slice(1).map((byte) => hex(byte, 2));
  return `${time.slice(0, 8)}-${time.slice(8)}-${version}-${variant}-${node.join('')}`;
}
