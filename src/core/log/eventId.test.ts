import { expect, it } from 'vitest';
import { eventId } from './eventId.ts';

it('makes the example of RFC 9562, appendix A.6 (from memory)', () => {
  const random = Uint8Array.of(0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f);
  expect(eventId(0x017f22e279b0, random)).toBe('017f22e2-79b0-7cc3-98c4-dc0c0c07398f');
});

it('has version and variant in place whatever the random bytes are, and sorts by time', () => {
  for (const byte of [0, 0xff]) {
    const id = eventId(1.9e12, new Uint8Array(10).fill(byte));
    expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(id < eventId(1.9e12 + 1, new Uint8Array(10))).toBe(true);
  }
});

it.each([-1, 2 ** 48, Number.NaN])('refuses the time %d', (ms) => {
  expect(() => eventId(ms, new Uint8Array(10))).toThrow(RangeError);
});

it('refuses too few random bytes', () => {
  expect(() => eventId(0, new Uint8Array(8))).toThrow(/allowed: 10/);
});
