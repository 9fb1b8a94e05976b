import { describe, expect, it } from 'vitest';
import type { AlarmChange } from '../../../../core/advice/alarms/engine.ts';
import { alarmReport } from '../../../../core/advice/alarms/report.ts';
import { reportRows } from './reportRows.ts';

const rowsOf = (history: readonly AlarmChange[]) =>
  Object.fromEntries(
    reportRows(alarmReport(history, 3600)).map(({ name, value, remark }) => [name, { value, remark }]),
  );

describe('the alarm report', () => {
  it('says that nothing sounded, and gives no time until seen', () => {
    const rows = rowsOf([]);
    expect(rows['Sounded']).toEqual({ value: '0', remark: undefined });
    expect(rows['Longest until seen']?.value).toBe('–');
  });

  it('counts what came, sounded and was put aside', () => {
    const rows = rowsOf([
      { timeS: 10, alarm: 'belowBand', what: 'came' },
      { timeS: 10, alarm: 'belowBand', what: 'sounded' },
      { timeS: 85, alarm: 'belowBand', what: 'put aside' },
    ]);
    expect(rows['Came']?.value).toBe('1');
    expect(rows['Sounded']).toEqual({ value: '1', remark: '0 act now, 0 act soon, 1 keep in mind' });
    expect(rows['Longest until seen']?.value).toBe('1:15');
    expect(rows['Put aside']?.value).toBe('1');
  });

  it('calls more than ten in ten minutes a flood, and not ten', () => {
    const sounded = (n: number) =>
      Array.from({ length: n }, (_, i) => ({ timeS: 20 * i, alarm: 'foam', what: 'sounded' }) as const);
    const remark = (n: number) => rowsOf(sounded(n))['Most in ten minutes']?.remark;
    expect([remark(2), remark(3), remark(10), remark(11)]).toEqual([
      'can be seen to',
      'more than the 2 that can be seen to with ease',
      'more than the 2 that can be seen to with ease',
      'a flood: more than 10 can’t be seen to',
    ]);
  });
});
