import { expect, it } from 'vitest';
import { referenceTable } from '../../../test/referenceTable.ts';
import { illuminantC, illuminantD65, observer2Degree, observer10Degree, wavelengthsNm } from './cie.ts';

it('the CIE tables are those of CIE 015:2018', () => {
  const columns = {
    nm: wavelengthsNm,
    x2: observer2Degree.x,
    y2: observer2Degree.y,
    z2: observer2Degree.z,
    x10: observer10Degree.x,
    y10: observer10Degree.y,
    z10: observer10Degree.z,
    D65_560eq100: illuminantD65,
    C_560eq100: illuminantC,
  };
  const table = referenceTable('cie-5nm');
  for (const [column, values] of Object.entries(columns)) {
    expect(values, column).toEqual(table.map((row) => Number(row[column])));
  }
});
