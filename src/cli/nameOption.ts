/** `--name`, as each command takes it that has to do with how this machine is reached. */
import { Option } from 'commander';

export function nameOption(): Option {
  return new Option('--name <name>', 'a further name that devices reach this machine by (may be repeated)')
    .argParser((name: string, before: string[]) => [...before, name])
    .default([]);
}
