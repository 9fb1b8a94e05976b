import { describe, expect, it } from 'vitest';
import { regions, rendered, type Scene, sceneCamera } from '../../../../bench/measure/renderedPhoto.ts';
import { referenceTable } from '../../../../test/referenceTable.ts';
import { normalNumbers } from '../../reactions/normal.ts';
import { patchOf } from './patch.ts';
import { type PictureFaultId, photoAbsorbance, type Seen } from './photoAbsorbance.ts';
import { photoColour, type Shot } from './photoColour.ts';

const camera = sceneCamera(normalNumbers(3), false);
const plain = { a430Path: 0.45, hueIndex: 6, exposure: 0.75 };

function seenOf(scene: Partial<Scene>, by = camera, seed = 9): Seen {
  const picture = rendered(by, { ...plain, ...scene }, normalNumbers(seed));
  return photoAbsorbance(
    patchOf(picture, regions.sample),
    regions.whites.map((region) => patchOf(picture, region)),
  );
}

function shotOf(seen: Seen, strength = 1): Shot {
  if (seen.kind === 'refused') throw new Error(seen.faults.map(({ why }) => why).join('; '));
  return { ...seen, strength };
}

const faultsOf = (seen: Seen): PictureFaultId[] => (seen.kind === 'refused' ? seen.faults.map(({ id }) => id) : []);

describe('a picture of a dilution', () => {
  it('is refused, with the reason, where it can’t tell', () => {
    expect(faultsOf(seenOf({ exposure: 1.1 }))).toContain('white clipped');
    expect(faultsOf(seenOf({ exposure: 0.3 }))).toContain('white too dark');
    expect(faultsOf(seenOf({ a430Path: 3 }))).toContain('sample too dark');
    expect(faultsOf(seenOf({ a430Path: 0.03 }))).toContain('sample too pale');
    expect(faultsOf(seenOf({}, { ...camera, fallOff: 0.5 }))).toContain('light uneven');
    expect(faultsOf(seenOf({}))).toEqual([]);
  });

  it('is refused when white balance has tinted the white, or the regions are mixed up', () => {
    const picture = rendered(camera, plain, normalNumbers(1));
    const tinted = { ...picture, data: Array.from(picture.data, (byte, at) => (at % 4 === 2 ? 0.75 * byte : byte)) };
    const [left, right] = regions.whites;
    expect(faultsOf(photoAbsorbance(patchOf(tinted, regions.sample), [patchOf(tinted, left)]))).toContain(
      'white tinted',
    );
    expect(faultsOf(photoAbsorbance(patchOf(picture, right), [patchOf(picture, regions.sample)]))).toContain(
      'sample brighter than white',
    );
  });

  it('is refused when the liquid is not brown', () => {
    const picture = rendered(camera, plain, normalNumbers(1));
    const swapped = {
      ...picture,
      data: Array.from(picture.data, (_, at) => picture.data[at % 4 === 0 ? at + 2 : at % 4 === 2 ? at - 2 : at] ?? 0),
    };
    const whites = regions.whites.map((region) => patchOf(swapped, region));
    expect(faultsOf(photoAbsorbance(patchOf(swapped, regions.sample), whites))).toContain('not brown');
  });

  it('says how far to thin what is too dark', () => {
    const seen = seenOf({ a430Path: 3 });
    expect(seen.kind === 'refused' && seen.thinBy).toBeGreaterThan(2);
  });

  it('needs regions of 500 pixels within it', () => {
    const picture = rendered(camera, plain, normalNumbers(1));
    expect(() => patchOf(picture, { left: 0, top: 0, width: 20, height: 20 })).toThrow(/400 pixels; allowed is 500/);
    expect(() => patchOf(picture, { left: 180, top: 0, width: 40, height: 40 })).toThrow(/not within 192 × 96/);
  });
});

describe('colour by photo', () => {
  it('of rendered scenes lies within its stated range, and within 5 % by the middle once the phone has seen a known dilution', () => {
    const off: number[] = [];
    let inside = 0;
    const scenes = 10;
    for (let seed = 1; seed <= scenes; seed++) {
      const normal = normalNumbers(400 + seed);
      const by = sceneCamera(normal, false);
      const a430Path = 0.45 * Math.exp(0.4 * normal());
      const shot = shotOf(seenOf({ a430Path, hueIndex: 6 + 0.5 * normal() }, by, seed));
      const known = shotOf(seenOf({ a430Path: 0.4, hueIndex: 6 + 0.5 * normal() }, by, 100 + seed));
      const { a430Path: found } = photoColour(
        [shot],
        [{ ...known, a430Path: 0.4, knownWithin: 0.03 }],
        'daylight',
        normal,
      );
      if (found.low <= a430Path && a430Path <= found.high) inside++;
      off.push(Math.abs(found.mid / a430Path - 1));
    }
    off.sort((a, b) => a - b);
    expect(inside).toBeGreaterThanOrEqual(0.8 * scenes);
    expect(off[scenes / 2]).toBeLessThan(0.05);
  }, 30_000);

  it('of published curves of a camera with colour filters lies within its stated range (NPL set, daylight and warm diodes)', () => {
    const rows = referenceTable('phone-channel-absorbance').filter(
      (row) =>
        row['camera']?.startsWith('colour filter') &&
        ['D65', 'LED-B3'].includes(row['light'] ?? '') &&
        ['HI5', 'HI6', 'HI7'].includes(row['spectrum'] ?? '') &&
        ['0.3', '0.7'].includes(row['A430_times_path'] ?? ''),
    );
    expect(rows.length).toBe(12);
    const inside = rows.filter((row) => {
      const absorbance = { r: Number(row['A_R']), g: Number(row['A_G']), b: Number(row['A_B']) };
      const sd = { r: 0.005, g: 0.005, b: 0.005 };
      const light = row['light'] === 'D65' ? 'daylight' : 'lamp';
      const { a430Path } = photoColour([{ absorbance, sd, strength: 1 }], [], light, normalNumbers(11));
      const truth = Number(row['A430_times_path']);
      return a430Path.low <= truth && truth <= a430Path.high;
    });
    expect(inside.length).toBeGreaterThanOrEqual(10);
  }, 30_000);

  it('is the same for the same numbers, and narrower once the phone has seen a known dilution', () => {
    const shot = shotOf(seenOf({}));
    const half = shotOf(seenOf({ a430Path: 0.225 }), 0.5);
    const wide = (found: ReturnType<typeof photoColour>): number => Math.log(found.a430Path.high / found.a430Path.low);
    const alone = photoColour([shot], [], 'daylight', normalNumbers(2));
    expect(photoColour([shot], [], 'daylight', normalNumbers(2))).toEqual(alone);
    const known = { ...half, a430Path: 0.225, knownWithin: 0.03 };
    expect(wide(photoColour([shot], [known], 'daylight', normalNumbers(2)))).toBeLessThan(0.7 * wide(alone));
  }, 30_000);
});
