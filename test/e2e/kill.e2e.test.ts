import { expect, it } from 'vitest';
import { scratchFolder } from '../testServer.ts';
import { killWhileWriting } from './killedLog.ts';

/** `KILL_ROUNDS=200 npx vitest run test/e2e/kill` for the full bar. */
const rounds = Number(process.env['KILL_ROUNDS'] ?? 20);

it(
  `kill -9 of the server while cooks and plans are written, ${rounds} times, loses nothing acknowledged and doubles nothing`,
  async () => {
    const { acknowledged, kept, lost, doubled, unasked, mostUnasked, damaged } = await killWhileWriting(
      scratchFolder(),
      rounds,
    );
    console.log(`${acknowledged} events and plans acknowledged over ${rounds} kills, ${kept} kept`);
    expect(lost).toEqual([]);
    expect(doubled).toBe(0);
    expect(damaged).toBe(0);
    expect(unasked).toBeLessThanOrEqual(mostUnasked);
  },
  30_000 + rounds * 15_000,
);
