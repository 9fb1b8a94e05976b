// In the page: picture files with bytes changed, cut off or put in between, given to the reader of photos as a person would choose them.

import { guessedFrames } from '../../../src/core/colour/photo/guessedFrames.ts';
import { readPicture } from '../../../src/core/colour/photo/readPicture.ts';
import { decoded } from '../../../src/web/places/shelf/measure/photo/decode.ts';

export interface Asked {
  readonly files: number;
  readonly seed: number;
  /** No file may take longer, ms. */
  readonly longestMs: number;
}

export interface Answered {
  readonly told: number;
  readonly refused: number;
  readonly unreadable: number;
  readonly slowestMs: number;
  /** What was neither. */
  readonly odd: readonly string[];
}

const types = ['image/png', 'image/jpeg', 'image/webp'] as const;

export async function readSpoilt({ files, seed, longestMs }: Asked): Promise<Answered> {
  const random = randomFrom(seed);
  const whole = await Promise.all(types.map((type) => fileOf(type)));
  const counts = { told: 0, refused: 0, unreadable: 0, slowestMs: 0 };
  const odd: string[] = [];
  for (let file = 0; file < files; file++) {
    const bytes = spoilt(whole[file % whole.length] ?? new Uint8Array(), random);
    const startMs = performance.now();
    try {
      const picture = await decoded(new Blob([bytes.slice()]));
      const { kind } = readPicture(picture, guessedFrames(picture).frames, 'daylight', []);
      counts[kind]++;
      // A picture that can be read is reckoned with for a third of a second and more, in a worker.
      if (kind === 'told') continue;
    } catch (error) {
      if (error instanceof Error && /no picture that this browser|pixels; allowed/.test(error.message))
        counts.unreadable++;
      else odd.push(`file ${file} of seed ${seed}: ${error}`);
    }
    const tookMs = performance.now() - startMs;
    counts.slowestMs = Math.max(counts.slowestMs, tookMs);
    if (tookMs > longestMs) odd.push(`file ${file} of seed ${seed} took ${tookMs.toFixed(0)} ms`);
  }
  return { ...counts, odd };
}

/** A dark dilution between white: refused for being dark, which takes no long reckoning. */
async function fileOf(type: string): Promise<Uint8Array> {
  const canvas = document.createElement('canvas');
  canvas.width = 120;
  canvas.height = 90;
  const context = canvas.getContext('2d') as CanvasRenderingContext2D;
  context.fillStyle = 'rgb(222 220 218)';
  context.fillRect(0, 0, 120, 90);
  context.fillStyle = 'rgb(60 30 12)';
  context.fillRect(42, 0, 36, 90);
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, type, 0.8));
  return new Uint8Array(await (blob as Blob).arrayBuffer());
}

type Random = (below: number) => number;

function spoilt(whole: Uint8Array, random: Random): Uint8Array {
  if (random(20) === 0) return Uint8Array.from({ length: random(2000) }, () => random(256));
  let bytes = Array.from(whole);
  for (let change = random(3); change >= 0; change--) {
    // A third of them in the head, where sizes and kinds are.
    const at = random(3) ? random(bytes.length + 1) : random(Math.min(64, bytes.length + 1));
    const way = random(6);
    if (way < 3) bytes[at] = random(256);
    else if (way === 3) bytes = bytes.slice(0, at);
    else if (way === 4) bytes.splice(at, 1 + random(16));
    else bytes.splice(at, 0, ...Array.from({ length: 1 + random(16) }, () => random(256)));
  }
  return Uint8Array.from(bytes, (byte) => byte ?? 0);
}

function randomFrom(seed: number): Random {
  let state = seed;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}
