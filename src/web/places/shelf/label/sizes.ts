/** Sizes of labels, mm: what fits on a jar, a tin or a bag. */
export const sizes = {
  tag: { name: 'Tag', widthMm: 50, heightMm: 30, qrMm: 22 },
  jar: { name: 'Jar', widthMm: 70, heightMm: 50, qrMm: 27 },
  bag: { name: 'Bag', widthMm: 100, heightMm: 70, qrMm: 34 },
} as const;
export type Size = keyof typeof sizes;
