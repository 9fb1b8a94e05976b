/** How a real cook is followed, and how this device stands with the server, in a line each. */
import type { Link } from '../../../records/cookLog/link.ts';
import type { View } from '../view.ts';

export function modeWords({ reading, overdue }: Pick<View, 'reading' | 'overdue'>): string {
  if (!reading) return 'Live, no reading yet';
  if (overdue || reading.valueC === null) return 'Live, by the model alone';
  return reading.byHand ? 'Live, read by hand' : 'Live, with a thermometer';
}

/** Until then nothing is said of a server that has not answered yet, s. */
const patienceS = 4;

export function linkWords({ state, ageS, waiting, refused, storage, server }: Link, openForS: number): string {
  if (state === 'on its own' && ageS === null && openForS < patienceS) return 'Looking for the server';
  const words = {
    live: waiting > 0 ? `${entries(waiting)} on the way to the server` : 'All is on the server',
    'catching up': 'Catching up with the server',
    'on its own':
      waiting > 0 ? `Server away: ${entries(waiting)} kept here until it is back` : 'Server away: on its own',
    'not let in':
      waiting > 0
        ? `This device is not let in: ${entries(waiting)} kept here until it is`
        : 'This device is not let in: on its own',
    unknown: 'The server has no such cook',
  }[state];
  const troubles = [
    ...(storage === 'full' ? ['this device has no room left'] : []),
    ...(storage === 'memory only' ? ['kept in this tab only: don’t close it'] : []),
    ...(server?.state === 'failing' ? ['the server can’t write'] : []),
    ...(refused > 0 ? [`${entries(refused)} refused by the server`] : []),
  ];
  return [words, ...troubles].join('; ');
}

const entries = (count: number): string => (count === 1 ? '1 entry' : `${count} entries`);
