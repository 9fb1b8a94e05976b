/** What the cook can answer to an alarm, beside having seen it. */
import { degrees, type TemperatureUnit } from '../../parts/temperature.ts';
import type { Acts } from './acts.ts';
import type { AlarmAnswers } from './alarms/AlarmActs.tsx';
import type { View } from './view.ts';

export function alarmAnswers({ reading }: View, acts: Acts, unit: TemperatureUnit): AlarmAnswers {
  const { probe, otherUnit, id, valueC } = reading ?? {};
  const vouch = { label: 'The thermometer is right', onAnswer: () => probe && acts.say('vouched', { probe }) };
  const asFahrenheit = otherUnit && valueC !== undefined && valueC !== null && otherUnit.otherC < valueC;
  return {
    foam: [{ label: 'It is quiet again', onAnswer: () => acts.say('foam', { rising: false }) }],
    unattended: [{ label: 'I am here', onAnswer: () => acts.say('here', {}) }],
    probeDoubtful: probe === undefined ? [] : [vouch],
    unitMixUp:
      otherUnit && probe !== undefined && id !== undefined
        ? [
            {
              label: `It shows °${asFahrenheit ? 'F' : 'C'}: ${degrees(otherUnit.otherC, unit)}`,
              onAnswer: () => acts.say('probeUnit', { probe, unit: asFahrenheit ? '[degF]' : 'Cel', from: id }),
            },
            { ...vouch, label: `No: it is ${degrees(valueC ?? 0, unit)}` },
          ]
        : [],
  };
}
