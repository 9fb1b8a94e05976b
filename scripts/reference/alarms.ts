/** Every alarm, from the catalogue that the engine goes by. */
import { type AlarmKind, alarmCatalogue } from '../../src/core/advice/alarms/catalogue.ts';
import { page, table } from './markdown.ts';

export function alarmsPage(): string {
  return page(
    'Alarms',
    'An alarm is a thing that needs an act in time (the definition of ISA-18.2). Times and dead bands are first values of our own, after ISA-18.2 and EEMUA 191 as told in tutorials.',
    (Object.entries(alarmCatalogue) as [string, AlarmKind][]).map(([id, alarm]) => alarmPart(id, alarm)),
  );
}

function alarmPart(id: string, alarm: AlarmKind): string {
  const again = alarm.soundsAgainS;
  return `## ${alarm.title}\n\n${table(
    ['', ''],
    [
      ['id', `\`${id}\``],
      ['priority', alarm.priority],
      ['when', alarm.condition],
      ['cause', alarm.cause],
      ['if nothing is done', alarm.consequence],
      ['what to do', alarm.action],
      ['respond within', `${alarm.respondWithinS} s`],
      ['comes after, goes after', `${alarm.onDelayS} s, ${alarm.offDelayS} s`],
      ['dead band', alarm.deadBandK === null ? 'none: not judged by temperature' : `${alarm.deadBandK} K`],
      ['sounds in', alarm.steps.join(', ')],
      ['sounds again', again ? `after ${again[0]} s unseen, then each ${again[1]} s` : 'no'],
      ['silent below', alarm.causedBy.length > 0 ? alarm.causedBy.join(', ') : 'none'],
    ],
  )}`;
}
