/** What the alarms of a cook came to, so that their limits can be tuned for this kitchen. */
import { alarmCatalogue } from '../../../../core/advice/alarms/catalogue.ts';
import type { AlarmChange } from '../../../../core/advice/alarms/engine.ts';
import { alarmReport } from '../../../../core/advice/alarms/report.ts';
import { reportRows } from './reportRows.ts';
import './alarms.css';

interface AlarmReportViewProps {
  readonly history: readonly AlarmChange[];
  /** End of the cook. */
  readonly untilS: number;
}

export function AlarmReportView({ history, untilS }: AlarmReportViewProps) {
  const report = alarmReport(history, untilS);
  return (
    <table className="alarm-report">
      <caption>
        Alarms of this cook
        <span className="quiet">Prompts and notes are not counted.</span>
      </caption>
      <tbody>
        {reportRows(report).map(({ name, value, remark }) => (
          <tr key={name}>
            <th scope="row">
              {name}
              {remark && <span className="small quiet">{remark}</span>}
            </th>
            <td>{value}</td>
          </tr>
        ))}
        {report.chatterers.length > 0 && (
          <tr>
            <th scope="row">
              Came and went
              <span className="small quiet">three times or more within a minute: its limit wants to be set wider</span>
            </th>
            <td>{report.chatterers.map((id) => alarmCatalogue[id].title).join(', ')}</td>
          </tr>
        )}
      </tbody>
    </table>
  );
}
