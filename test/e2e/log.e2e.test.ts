import { expect, it } from 'vitest';
import { scratchFolder } from '../testServer.ts';
import { killWhileWriting } from './killedLog.ts';

/** `KILL_ROUNDS=200 npx vitest run test/e2e/log` for the full bar. */
const rounds = Number(process.env['KILL_ROUNDS'] ?? 20);

it(
  `kill -9 of the server while a cook is written, ${rounds} times, loses no acknowledged event and doubles none`,
  async () => {
    const { acknowledged, kept, lost, doubled, unasked, damaged } = await killWhileWriting(scratchFolder(), rounds);
    console.log(`${acknowledged} events acknowledged over ${rounds} kills, ${kept} kept`);
    expect(lost).toEqual([]);
    expect(doubled).toBe(0);
    expect(damaged).toBe(0);
    // Each writer may have one batch of seven under way at each kill.
    expect(unasked).toBeLessThanOrEqual(rounds * 4 * 7);
  },
  30_000 + rounds * 6000,
);
