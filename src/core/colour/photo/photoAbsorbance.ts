/**
 * What a dilution absorbs in each channel of a picture, against white seen through the same glass with water in the same picture; or why
 * the picture can't tell. Ratios within one picture need no trust in its exposure or white balance, only in its tone curve.
 */
import { decoded } from '../srgb.ts';
import type { Patch } from './patch.ts';
import { type Channel, channels, type PerChannel, perChannel } from './viewer.ts';

/** Decadic absorbance over the light's path in each channel, with its error (1 sd). */
export interface ChannelAbsorbance {
  readonly absorbance: PerChannel;
  readonly sd: PerChannel;
}

export const pictureFaultIds = [
  'white clipped',
  'white too dark',
  'white tinted',
  'light uneven',
  'sample uneven',
  'sample too dark',
  'sample too pale',
  'sample brighter than white',
  'not brown',
] as const;
export type PictureFaultId = (typeof pictureFaultIds)[number];

export interface PictureFault {
  readonly id: PictureFaultId;
  readonly why: string;
}

export type Seen =
  | ({ readonly kind: 'seen' } & ChannelAbsorbance)
  | { readonly kind: 'refused'; readonly faults: readonly PictureFault[]; readonly thinBy: number | undefined };

/** Bytes between which white and sample are read well. Source: 180 to 250 for white, 40 for the sample's darkest channel (judgement of the design's notes). */
const whiteBytes = [180, 250] as const;
const darkestByte = 40;
/** White whose channels lie further apart than this, in linear light, has been balanced for something else. */
const tintAtMost = 1.5;
const unevenWhite = 0.12;
const unevenSample = 0.2;
const roughSample = 0.1;
/** Blue absorbs best between these; aimed at is the middle. */
const blue = { least: 0.08, aimed: 0.35 } as const;
/** Share of the white's light that strays into the darker regions, 1 sd (assumed). */
const flare = 0.005;
/** Pixels of a JPEG know about each other over blocks of about this many. */
const pixelsThatAgree = 16;

/** @param whites one white region or more, best one to either side of the sample */
export function photoAbsorbance(sample: Patch, whites: readonly Patch[]): Seen {
  const white = perChannel((channel) => mean(whites.map(({ linear }) => linear[channel])));
  const absorbance = perChannel(
    (channel) => -Math.log10(Math.max(sample.linear[channel], decoded(1)) / white[channel]),
  );
  const faults = [...faultsOfWhite(whites), ...faultsOfSample(sample, absorbance)];
  if (faults.length > 0) return { kind: 'refused', faults, thinBy: thinBy(sample, absorbance) };
  const uneven = 0.25 * Math.max(apart(whites), ...whites.map(({ slope }) => slope));
  return {
    kind: 'seen',
    absorbance,
    sd: perChannel((channel) => errorOf(channel, sample, whites, absorbance, uneven)),
  };
}

function faultsOfWhite(whites: readonly Patch[]): PictureFault[] {
  const bytes = whites.flatMap((white) => channels.map((channel) => white.bytes[channel]));
  const [least, most] = [Math.min(...bytes), Math.max(...bytes)];
  const tint = Math.max(...whites.map(({ linear }) => ratio(channels.map((channel) => linear[channel]))));
  const slope = Math.max(apart(whites), ...whites.map((white) => white.slope));
  return [
    ...fault(
      most > whiteBytes[1] || whites.some(({ clipped }) => clipped > 0.01),
      'white clipped',
      `the white reaches ${most.toFixed(0)} of 255: take the picture a little darker`,
    ),
    ...fault(
      least < whiteBytes[0] && most < whiteBytes[0],
      'white too dark',
      `the white reaches only ${most.toFixed(0)} of 255 where ${whiteBytes[0]} to ${whiteBytes[1]} is wanted: more light, or a longer exposure`,
    ),
    ...fault(
      tint > tintAtMost,
      'white tinted',
      `the white's channels differ ${tint.toFixed(1)} times: lock the white balance on the white paper`,
    ),
    ...fault(
      slope > unevenWhite,
      'light uneven',
      `the light on the white changes by ${(100 * slope).toFixed(0)} %: one even light, no shadow`,
    ),
  ];
}

function faultsOfSample(sample: Patch, absorbance: PerChannel): PictureFault[] {
  return [
    ...fault(
      sample.slope > unevenSample || sample.scatter > roughSample,
      'sample uneven',
      'the sample is not even: no bubbles, no reflection, no edge of the glass in the region',
    ),
    ...fault(
      sample.bytes.b < darkestByte,
      'sample too dark',
      `its blue is down to ${sample.bytes.b.toFixed(0)} of 255 where ${darkestByte} and more is wanted: thin it further`,
    ),
    ...fault(
      absorbance.b < blue.least && absorbance.b >= -0.02,
      'sample too pale',
      'it hardly differs from water: take a stronger dilution or a wider glass',
    ),
    ...fault(
      channels.some((channel) => absorbance[channel] < -0.02),
      'sample brighter than white',
      'the sample is brighter than the white: the regions are mixed up, or light comes in from the side',
    ),
    ...fault(
      absorbance.r > absorbance.g + 0.02 || absorbance.g > absorbance.b + 0.02,
      'not brown',
      'it takes more red or green than blue, as no browned sugar does: a filter of the phone, mixed lamps, or another liquid',
    ),
  ];
}

function fault(is: boolean, id: PictureFaultId, why: string): PictureFault[] {
  return is ? [{ id, why }] : [];
}

/** How many times weaker the next dilution should be, less than 1 for a stronger one; none when its strength is no trouble. */
function thinBy({ bytes }: Patch, { b }: PerChannel): number | undefined {
  if (bytes.b >= darkestByte && b >= blue.least) return undefined;
  return Math.max(b, 0.02) / blue.aimed;
}

function errorOf(
  channel: Channel,
  sample: Patch,
  whites: readonly Patch[],
  { [channel]: a }: PerChannel,
  uneven: number,
) {
  const count = sample.pixels / pixelsThatAgree;
  const byte = sample.bytes[channel];
  const quantum = (0.3 * (decoded(byte + 0.5) - decoded(byte - 0.5))) / Math.max(sample.linear[channel], decoded(1));
  const grain = Math.hypot(sample.scatter, mean(whites.map(({ scatter }) => scatter))) / Math.sqrt(count);
  return Math.hypot(quantum, grain, uneven, flare * 10 ** a) / Math.LN10;
}

/** By how much the whites differ, as a share. */
function apart(whites: readonly Patch[]): number {
  return Math.max(...channels.map((channel) => ratio(whites.map(({ linear }) => linear[channel])))) - 1;
}

function ratio(values: readonly number[]): number {
  return Math.max(...values) / Math.max(1e-6, Math.min(...values));
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, each) => sum + each, 0) / values.length;
}
