/** Inputs, how they do and what is wrong with a reading, in words. */
import type { InputRecord, InputState } from '../../../../api/input.ts';
import type { ReadingUnit } from '../../../../core/log/bodies.ts';
import type { ReadingFault } from '../../../../core/log/markReading.ts';

export const stateWords: Readonly<Record<InputState, string>> = {
  off: 'Off',
  connecting: 'Connecting',
  waiting: 'Connected, nothing heard yet',
  hearing: 'Hearing it',
  silent: 'Silent for longer than it should be',
  gone: 'It says that it is gone',
  failing: 'Not connected',
};

export const faultWords: Readonly<Record<ReadingFault, string>> = {
  noTemperature: 'no temperature',
  powerUp: 'the value of a sensor that was just switched on',
  tooCold: 'too cold for a kitchen',
  jump: 'a jump, not believed yet',
};

export const unitOptions = [
  ['Cel', '°C'],
  ['[degF]', '°F'],
  ['K', 'K'],
] as const satisfies readonly (readonly [ReadingUnit, string])[];

export const bauds = [
  ['9600', '9600'],
  ['19200', '19,200'],
  ['57600', '57,600'],
  ['115200', '115,200'],
] as const;

export function whereFrom(input: InputRecord['input']): string {
  if (input.kind === 'serial') return `${input.port}, ${input.baud} baud`;
  return `${input.broker === 'own' ? 'Umberpan’s own broker' : input.broker}, ${input.topic}`;
}
