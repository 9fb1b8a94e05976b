import { describe, expect, it } from 'vitest';
import type { ReadingQuality } from './bodies.ts';
import type { AnyEntry, Entry } from './corrections.ts';
import { believedReadings, furthestApart } from './probesApart.ts';
import { readingAsReceived } from './readingAsReceived.ts';

const at = (timeS: number) => ({ id: `${timeS}`, device: 'd', trueMs: timeS * 1000, timeS, before: [] });

function shows(probe: string, timeS: number, valueC: number, quality: ReadingQuality = 'fresh'): Entry<'reading'> {
  return { ...at(timeS), kind: 'reading', body: { ...readingAsReceived(probe, valueC, 'Cel'), quality } };
}
const vouched = (probe: string, timeS: number): AnyEntry => ({ ...at(timeS), kind: 'vouched', body: { probe } });

/** Each shows every `everyS`, the second half of that after the first. */
function two(everyS: number, first: (s: number) => number, second: (s: number) => number) {
  return Array.from({ length: Math.floor(600 / everyS) }, (_, n) => {
    const [firstS, secondS] = [n * everyS, (n + 0.5) * everyS];
    return [shows('pan', firstS, first(firstS)), shows('couple', secondS, second(secondS))];
  }).flat();
}

describe('two thermometers', () => {
  it.each([1, 5, 10, 30])('that climb together are not apart, read each %d s by turns', (everyS) => {
    const climbs = (s: number) => 20 + s / 4;
    const readings = two(everyS, climbs, climbs);
    for (let timeS = everyS; timeS < 600; timeS += 7) {
      expect(furthestApart(readings, timeS)?.byK ?? 0, `${timeS} s`).toBeLessThan(1e-9);
    }
  });

  it('are as far apart as they show, the colder named first', () => {
    const readings = two(
      10,
      () => 131,
      (s) => 131 - s / 100,
    );
    const { probes, byK } = furthestApart(readings, 595) ?? {};
    expect(probes?.map(({ probe }) => probe)).toEqual(['couple', 'pan']);
    expect(byK).toBeCloseTo(5.9, 1);
  });

  it('are not compared when one is silent, read by hand, or doubted by itself', () => {
    const pan = Array.from({ length: 60 }, (_, n) => shows('pan', 10 * n, 130));
    expect(furthestApart(pan, 590)).toBeUndefined();
    expect(furthestApart([shows('couple', 0, 140), ...pan], 300)).toBeUndefined();
    const others = (quality: ReadingQuality) => pan.map(({ timeS }) => shows('couple', timeS, 140, quality));
    for (const quality of ['byHand', 'doubtful'] as const)
      expect(furthestApart([...pan, ...others(quality)], 590), quality).toBeUndefined();
    expect(
      furthestApart(
        [...pan, ...others('fresh')].toSorted((a, b) => a.timeS - b.timeS),
        590,
      )?.byK,
    ).toBe(10);
  });
});

describe('the word of the cook', () => {
  const readings = two(
    10,
    () => 130,
    (s) => 130 + s / 100,
  );
  const believed = (...answers: AnyEntry[]) =>
    believedReadings(readings, answers).filter(({ body }) => body.probe === 'couple').length;
  const all = believed();

  it('that one is right leaves the other out, from a minute before', () => {
    // At 400 s they are 4 K apart; of the second all after 340 s are left out.
    expect(believed(vouched('pan', 400))).toBe(readings.filter(isCouple).filter(({ timeS }) => timeS < 340).length);
  });

  it('says nothing of the other while they are not apart, and brings back one that is vouched for later', () => {
    expect(believed(vouched('pan', 100))).toBe(all);
    const between = readings.filter(isCouple).filter(({ timeS }) => timeS >= 340 && timeS < 440).length;
    expect(believed(vouched('pan', 400), vouched('couple', 500))).toBe(all - between);
  });

  it('about a thermometer that does not send changes nothing', () => {
    expect(believedReadings(readings, [vouched('by hand', 400)])).toBe(readings);
  });
});

const isCouple = ({ body }: Entry<'reading'>) => body.probe === 'couple';
