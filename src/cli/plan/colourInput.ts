/** A colour as people write it: `45EBC`, `20SRM`, `1.8A430`, each of a 10 % w/w solution, or a swatch such as `#6b2a08`. */
import { a430FromEbc, a430FromSrm, ebcFromA430 } from '../../core/colour/scales.ts';
import { a430Range, type ColourAim, swatchAim, type Within } from '../../core/planning/aim.ts';
import { writtenNumber } from '../../core/units/writtenNumber.ts';
import type { Input } from '../input.ts';
import { misused, Stop } from '../stop.ts';

const scales: Readonly<Record<string, (value: number) => number>> = {
  ebc: a430FromEbc,
  srm: a430FromSrm,
  a430: (value) => value,
};

const [lowest, highest] = a430Range.map(ebcFromA430) as [number, number];
const allowed = `${lowest} to ${highest} EBC, as 45EBC, 20SRM or 1.8A430, or a swatch as #6b2a08`;
const written = /^(.*?)\s*(EBC|SRM|A430)$/i;

/** A430 per cm that a text writes on one of the scales; undefined when it is not written so. */
function writtenA430(text: string): number | undefined {
  const [, figures, scale] = written.exec(text.trim()) ?? [];
  const value = figures ? writtenNumber(figures) : undefined;
  return typeof value === 'number' ? scales[scale?.toLowerCase() ?? '']?.(value) : undefined;
}

export const colourInput: Input<ColourAim> = {
  placeholder: '<colour>',
  meaning: 'colour wanted of a 10 % solution, such as 45EBC or 20SRM, or of a drop on white, such as #6b2a08',
  required: true,
  read: (text, flag) => {
    if (/^#[0-9a-f]{6}$/i.test(text.trim())) return swatchAim(text.trim(), 'drop');
    const a430 = writtenA430(text);
    if (a430 === undefined) return misused(flag, text, 'is no colour', allowed);
    if (a430 >= a430Range[0] && a430 <= a430Range[1]) return { a430 };
    const message = `${flag}: '${text}' is outside the range; allowed: ${allowed}`;
    throw new Stop({ kind: 'outsideRange', field: flag, value: text, allowed, message });
  },
};

const withinAllowed = 'such as 10EBC, 5SRM or 20%';

export const withinInput: Input<Within> = {
  placeholder: '<span>',
  meaning: `what still counts as landed, to either side, ${withinAllowed}`,
  required: true,
  read: (text, flag) => {
    const a430 = writtenA430(text);
    if (a430 !== undefined && a430 > 0) return { a430 };
    const percent = /^(.*)%$/.exec(text.trim())?.[1];
    const share = percent ? writtenNumber(percent) : undefined;
    if (typeof share === 'number' && share > 0 && share < 100) return { share: share / 100 };
    return misused(flag, text, 'is no span of colour', withinAllowed);
  },
};
