/** The alarm report as rows. Rates to hold it against: ISA-18.2 and EEMUA 191, as told in tutorials (about 1 in 10 min is well, 10 in 10 min a flood). */
import type { AlarmReport } from '../../../../core/advice/alarms/report.ts';
import { minutesAndSeconds } from './alarmWords.ts';

export interface ReportRow {
  readonly name: string;
  readonly value: string;
  readonly remark?: string;
}

const floodInTenMinutes = 10;
const mostInTenMinutes = 2;

export function reportRows({ came, sounded, soundedAgain, ...report }: AlarmReport): readonly ReportRow[] {
  const total = sounded['act now'] + sounded['act soon'] + sounded['keep in mind'];
  const heard = `${sounded['act now']} act now, ${sounded['act soon']} act soon, ${sounded['keep in mind']} keep in mind`;
  return [
    { name: 'Came', value: String(came), remark: 'heard or not' },
    { name: 'Sounded', value: String(total), ...(total > 0 && { remark: heard }) },
    { name: 'Sounded again, not seen', value: String(soundedAgain) },
    { name: 'Most in ten minutes', value: String(report.peakInTenMinutes), remark: peakWords(report.peakInTenMinutes) },
    { name: 'Longest until seen', value: total > 0 ? minutesAndSeconds(report.longestUnseenS) : '–', remark: 'min:s' },
    { name: 'Put aside', value: String(report.putAsides) },
  ];
}

function peakWords(peak: number): string {
  if (peak > floodInTenMinutes) return `a flood: more than ${floodInTenMinutes} can’t be seen to`;
  return peak > mostInTenMinutes ? `more than the ${mostInTenMinutes} that can be seen to with ease` : 'can be seen to';
}
