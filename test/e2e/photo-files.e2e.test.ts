import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { slowed } from '../../bench/measure/inChromium.ts';
import type { Answered, Asked } from './photoFiles/readSpoilt.ts';

/** `CASES=100000` for the full number. */
const files = Number(process.env['CASES'] ?? 300);
const together = 500;
/** A second, on a machine that does nothing else; with all the other tests a hang is told from a wait. */
const longestMs = process.env['CASES'] ? 1000 : 10_000;
const module = fileURLToPath(new URL('./photoFiles/readSpoilt.ts', import.meta.url));

it(
  `any file chosen as a photo is read or refused in words, and soon: ${files} of them`,
  async () => {
    const sum = { told: 0, refused: 0, unreadable: 0 };
    let slowestMs = 0;
    const odd: string[] = [];
    const done = await slowed(module, 'readSpoilt', 1, async ({ inPage }) => {
      for (let at = 0; at < files; at += together) {
        const asked: Asked = { files: Math.min(together, files - at), seed: 1 + at, longestMs };
        const answered = await inPage<Answered>(asked);
        for (const name of ['told', 'refused', 'unreadable'] as const) sum[name] += answered[name];
        slowestMs = Math.max(slowestMs, answered.slowestMs);
        odd.push(...answered.odd);
      }
    });
    console.log(`photo files: ${JSON.stringify(sum)}, the slowest ${slowestMs.toFixed(0)} ms`);
    expect(done).toBe(true);
    expect(odd).toEqual([]);
    expect(sum.told + sum.refused + sum.unreadable).toBe(files);
    expect(Math.min(sum.refused, sum.unreadable)).toBeGreaterThan(0);
  },
  120_000 + files * 40,
);
