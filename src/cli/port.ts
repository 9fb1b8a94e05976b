/** A port of this machine as an option takes it. */
import { InvalidArgumentError } from 'commander';

export function port(text: string): number {
  if (!/^\d{1,5}$/.test(text) || Number(text) > 65535) throw new InvalidArgumentError('Allowed: 0 to 65535.');
  return Number(text);
}
