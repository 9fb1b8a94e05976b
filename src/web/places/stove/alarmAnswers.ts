/** What the cook can do about an alarm. */
import type { AlarmId } from '../../../core/advice/alarms/catalogue.ts';
import { degrees, type TemperatureUnit } from '../../parts/temperature.ts';
import type { Acts } from './acts.ts';
import type { AlarmActions, AlarmAnswers } from './alarms/AlarmActs.tsx';
import type { View } from './view.ts';

/** Seen, and put aside; to call an alarm back it is put aside for the least time that the log takes. */
export function alarmActions(acts: Acts): AlarmActions {
  return {
    seen: (alarm) => acts.say('seen', { alarm }),
    putAside: (alarm, forS, reason) => acts.say('putAside', { alarm, forS: Math.max(1, forS), reason }),
  };
}

/** What the cook can answer, beside having seen it. */
export function alarmAnswers({ reading, apart }: View, acts: Acts, unit: TemperatureUnit): AlarmAnswers {
  /** Who answers has seen it. */
  const answer = (alarm: AlarmId, label: string, say: () => void, of?: string) => ({
    label,
    of,
    onAnswer: () => {
      acts.say('seen', { alarm });
      say();
    },
  });
  const { probe, otherUnit, id, valueC } = reading ?? {};
  const vouch = () => probe !== undefined && acts.say('vouched', { probe });
  const asFahrenheit = otherUnit && typeof valueC === 'number' && otherUnit.otherC < valueC;
  return {
    foam: [answer('foam', 'It is quiet again', () => acts.say('foam', { rising: false }))],
    unattended: [answer('unattended', 'I am here', () => acts.say('here', {}))],
    probeDoubtful: probe === undefined ? [] : [answer('probeDoubtful', 'The thermometer is right', vouch)],
    probesApart: (apart?.probes ?? []).map((shown) =>
      answer(
        'probesApart',
        `${degrees(shown.valueC, unit)} is right`,
        () => acts.say('vouched', { probe: shown.probe }),
        shown.probe,
      ),
    ),
    unitMixUp:
      otherUnit && probe !== undefined && id !== undefined
        ? [
            answer('unitMixUp', `It shows °${asFahrenheit ? 'F' : 'C'}: ${degrees(otherUnit.otherC, unit)}`, () =>
              acts.say('probeUnit', { probe, unit: asFahrenheit ? '[degF]' : 'Cel', from: id }),
            ),
            answer('unitMixUp', `No: it is ${degrees(valueC ?? 0, unit)}`, vouch),
          ]
        : [],
  };
}
