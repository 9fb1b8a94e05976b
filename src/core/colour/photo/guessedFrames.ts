/** Where the dilution and the white beside it may be in a picture: even brown, and even white to either side of it. A guess to be mended by hand. */
import { type Frames, frameAt, leastSide, type Spot } from './frames.ts';
import type { Picture } from './patch.ts';

export interface Guess {
  readonly frames: Frames;
  /** Something fits; otherwise the frames only lie side by side. */
  readonly found: boolean;
}

/** Cells along the shorter side, and how many of them a block is wide: the largest that fits somewhere. */
const cellsAcross = 40;
const leastCell = 4;
const blockSides = [9, 7, 5, 3] as const;
/** A frame is so much of its block: the rim may touch the glass. */
const inset = 0.75;
/** Of a block's cells, of 255: even enough to be one thing. */
const evenWhite = 14;
const evenSample = 36;
/** Channels of white differ by less than this factor; brown has this much more red than blue, or is as dark as this. */
const neutral = 1.35;
const brownBy = 14;
const dark = 60;
/** White so many sides of a block away has not the glass's rim in it. */
const clearOfSample = 1.2;

interface Block extends Spot {
  readonly r: number;
  readonly g: number;
  readonly b: number;
  /** Greatest less least of its cells, of the channel where that is most. */
  readonly spread: number;
}

export function guessedFrames(picture: Picture): Guess {
  const cell = Math.max(leastCell, Math.floor(Math.min(picture.width, picture.height) / cellsAcross));
  const cells = cellsOf(picture, cell);
  const roomy = blockSides.filter((side) => inset * side * cell >= leastSide);
  for (const side of roomy) {
    const three = threeOf(blocksOf(cells, side), cells, side);
    if (!three) continue;
    const frame = (spot: Spot) => frameAt(spot, inset * side * cell, picture);
    const [sample, white1, white2] = three.map((spot) =>
      frame({ x: (spot.x + side / 2) * cell, y: (spot.y + side / 2) * cell }),
    );
    if (sample && white1 && white2) return { frames: { sample, white1, white2 }, found: true };
  }
  return { frames: sideBySide(picture), found: false };
}

function sideBySide(picture: Picture): Frames {
  const { width, height } = picture;
  const frame = (share: number) => frameAt({ x: share * width, y: height / 2 }, Math.min(width, height) / 6, picture);
  return { sample: frame(0.5), white1: frame(0.2), white2: frame(0.8) };
}

interface Cells {
  readonly across: number;
  readonly down: number;
  /** Three mean bytes each. */
  readonly means: Float64Array;
}

function cellsOf({ width, height, data }: Picture, cell: number): Cells {
  const [across, down] = [Math.floor(width / cell), Math.floor(height / cell)];
  const means = new Float64Array(3 * across * down);
  const stride = Math.max(1, Math.floor(cell / 6));
  for (let at = 0; at < across * down; at++) {
    const [left, top] = [(at % across) * cell, Math.floor(at / across) * cell];
    let count = 0;
    for (let y = top; y < top + cell; y += stride)
      for (let x = left; x < left + cell; x += stride) {
        count++;
        for (let place = 0; place < 3; place++) means[3 * at + place] += data[4 * (y * width + x) + place] ?? 0;
      }
    for (let place = 0; place < 3; place++) means[3 * at + place] /= count;
  }
  return { across, down, means };
}

function blocksOf({ across, down, means }: Cells, side: number): Block[] {
  const blocks: Block[] = [];
  for (let y = 0; y + side <= down; y++)
    for (let x = 0; x + side <= across; x++) {
      const channel = [0, 1, 2].map((place) => {
        let [least, most, sum] = [255, 0, 0];
        for (let dy = 0; dy < side; dy++)
          for (let dx = 0; dx < side; dx++) {
            const mean = means[3 * ((y + dy) * across + x + dx) + place] ?? 0;
            least = Math.min(least, mean);
            most = Math.max(most, mean);
            sum += mean;
          }
        return { mean: sum / side ** 2, spread: most - least };
      });
      const [r, g, b] = channel.map(({ mean }) => mean) as [number, number, number];
      blocks.push({ x, y, r, g, b, spread: Math.max(...channel.map(({ spread }) => spread)) });
    }
  return blocks;
}

/** The sample, near the middle and brown; and the nearest whites to either side of it, or else two that are clear of each other. */
function threeOf(blocks: readonly Block[], { across, down }: Cells, side: number): [Block, Block, Block] | undefined {
  const whites = blocks.filter(isWhite);
  const brightest = Math.max(...whites.map(brightness));
  const centre = { x: (across - side) / 2, y: (down - side) / 2 };
  const sample = least(
    blocks.filter((block) => isBrown(block) && brightness(block) < 0.97 * brightest),
    (block) =>
      block.spread / 255 + (0.4 * apart(block, centre)) / across - 0.3 * Math.min(0.4, (block.r - block.b) / 255),
  );
  if (!sample) return undefined;
  // A pale dilution is nearly white itself: white lets more of the blue through.
  const blue = sample.b + 0.6 * (Math.max(...whites.map(({ b }) => b)) - sample.b);
  const clear = whites.filter((block) => block.b > blue && apart(block, sample) >= clearOfSample * side);
  const nearness = (block: Block) => apart(block, sample) / side + block.spread / 4;
  const first = least(clear, nearness);
  if (!first) return undefined;
  const isAcross = ({ x, y }: Block) =>
    (x - sample.x) * (first.x - sample.x) + (y - sample.y) * (first.y - sample.y) < 0;
  const second =
    least(clear.filter(isAcross), nearness) ??
    least(
      clear.filter((block) => apart(block, first) >= side),
      nearness,
    );
  if (!second) return undefined;
  return first.x <= second.x ? [sample, first, second] : [sample, second, first];
}

function isWhite(block: Block): boolean {
  const { r, g, b, spread } = block;
  return spread <= evenWhite && Math.min(r, g, b) > 90 && Math.max(r, g, b) < neutral * Math.min(r, g, b);
}

function isBrown({ r, g, b, spread }: Block): boolean {
  if (spread > evenSample || r < g - 3 || g < b - 3) return false;
  return r - b >= brownBy || r < dark;
}

const brightness = ({ r, g, b }: Block): number => (r + g + b) / 3;
const apart = (a: Spot, b: Spot): number => Math.hypot(a.x - b.x, a.y - b.y);

function least<T>(of: readonly T[], score: (each: T) => number): T | undefined {
  let [best, lowest]: [T | undefined, number] = [undefined, Number.POSITIVE_INFINITY];
  for (const each of of) {
    const value = score(each);
    if (value < lowest) [best, lowest] = [each, value];
  }
  return best;
}
