import { describe, expect, it } from 'vitest';
import { colourPrints, extractPrints } from './printedAs.ts';

describe('what a packet prints', () => {
  it.each(Object.values(extractPrints))('$name is read back as it is written', ({ range, toSolids, fromSolids }) => {
    for (const printed of range) {
      const solids = toSolids(printed);
      expect(solids).toBeGreaterThanOrEqual(0.5);
      expect(solids).toBeLessThanOrEqual(1);
      expect(fromSolids(solids)).toBeCloseTo(printed, 6);
    }
  });

  it.each(Object.values(colourPrints))('$name is read back as it is written', ({ toSpecific, fromSpecific }) => {
    for (const printed of [0, 3, 750]) expect(fromSpecific(toSpecific(printed, 0.8), 0.8)).toBeCloseTo(printed, 9);
  });

  it('is the same sugar by each: 75 EBC of 10 % w/w is 38.1 SRM, 72.2 EBC of 10 % w/v, 722 undiluted', () => {
    const specific = colourPrints.ebc10ww.toSpecific(75, 1);
    expect(colourPrints.srm10ww.fromSpecific(specific, 1)).toBeCloseTo(38.1, 6);
    expect(colourPrints.ebc10wv.fromSpecific(specific, 1)).toBeCloseTo((75 * 100) / 103.81, 6);
    expect(colourPrints.ebcAsIs.fromSpecific(specific, 1)).toBeCloseTo((75 * 1000) / 103.81, 6);
  });
});
