/** Holds after those of the route, each as `140C,10min`; several by several options, or parted by semicolons. */
import { type FurtherHold, mostFurtherHolds, furtherHoldRanges as ranges } from '../../core/planning/request.ts';
import { type Input, quantity } from '../input.ts';
import { misused } from '../stop.ts';

const celsius = quantity('temperature', '', 'C', ranges.celsius);
const seconds = quantity('duration', '', 'min', [60 * ranges.minutes[0], 60 * ranges.minutes[1]]);

export const stepInput: Input<readonly FurtherHold[]> = {
  placeholder: '<temperature,duration>',
  meaning: `a further hold after those of the route, such as 150C,10min; up to ${mostFurtherHolds} of them`,
  required: true,
  several: true,
  read: (text, flag) => {
    const holds = text.split(';').map((each) => holdFrom(each, flag));
    if (holds.length > mostFurtherHolds) misused(flag, text, 'are too many holds', `up to ${mostFurtherHolds}`);
    return holds;
  },
};

function holdFrom(text: string, flag: string): FurtherHold {
  // A comma before a digit may be a decimal one: the last that is followed by a blank or by the time parts the two.
  const [, temperature, duration] = /^(.*[CFK])\s*,\s*(.*)$/i.exec(text.trim()) ?? [];
  if (temperature === undefined || duration === undefined) {
    return misused(flag, text, 'is no hold', 'a temperature and a time, such as 150C,10min or 302F,10min');
  }
  return { celsius: celsius.read(temperature, flag), minutes: seconds.read(duration, flag) / 60 };
}
