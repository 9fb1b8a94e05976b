/** Inclusive limits of the numbers in events, for every boundary alike. They keep out what can't be; what is unwise is judged elsewhere. */

export const eventRanges = {
  /** A thermometer that shows less or more than this is no kitchen thermometer. */
  valueC: [-40, 400],
  notch: [0, 20],
  waterKg: [0, 5],
  spoonfuls: [0, 100],
  alkaliPart: [1, 100],
  alkaliKg: [0, 0.2],
  a430: [0, 1000],
  stepIndex: [0, 50],
  grossKg: [0, 50],
  tareKg: [0, 20],
  ph: [0, 14],
  syrupKg: [1e-5, 5],
  dilutionWaterKg: [0, 5],
  brix: [0, 100],
  dilutionC: [0, 100],
  /** Ten minutes at most: whoever puts an alarm aside must meet it again. */
  putAsideS: [1, 600],
  speed: [1, 60],
  seed: [-0x8000_0000, 0xffff_ffff],
  deviceSeq: [1, Number.MAX_SAFE_INTEGER],
  tMono: [0, 1e13],
  /** 300 years: a device that was never told the time may say 1970. */
  clockOffsetMs: [-1e13, 1e13],
  clockErrMs: [0, 1e9],
} as const satisfies Record<string, readonly [number, number]>;
