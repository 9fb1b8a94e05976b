/** Every place of a command line where a word can be finished: a command with its own commands and options. */
import type { Command, Option } from 'commander';

export interface Place {
  /** Words that lead here, the program's first: `umberpan handbook density`. */
  readonly path: string;
  readonly words: readonly Told[];
  readonly options: readonly Taken[];
}

interface Told {
  readonly word: string;
  readonly meaning: string;
}

export interface Taken extends Told {
  /** What follows the option: nothing, one of a few words, a file, a folder, or something that nobody can guess. */
  readonly takes: 'nothing' | 'words' | 'file' | 'folder' | 'text';
  readonly words: readonly string[];
}

export function placesOf(command: Command, before = ''): readonly Place[] {
  const path = `${before}${command.name()}`;
  const words = [
    ...command.commands.map((each) => ({ word: each.name(), meaning: each.description() })),
    ...command.registeredArguments.flatMap(({ argChoices = [] }) => argChoices.map((word) => ({ word, meaning: '' }))),
  ];
  const options = [...command.options.filter(({ hidden }) => !hidden).map(taken), help];
  return [{ path, words, options }, ...command.commands.flatMap((each) => placesOf(each, `${path} `))];
}

const help: Taken = { word: '--help', meaning: 'what can be said here', takes: 'nothing', words: [] };

function taken({ long, flags, description, argChoices }: Option): Taken {
  const [, placeholder] = /<(.+)>/.exec(flags) ?? [];
  const told = { word: long ?? flags, meaning: description };
  const words = argChoices ?? (placeholder?.includes('|') ? placeholder.split('|') : []);
  if (placeholder === undefined) return { ...told, takes: 'nothing', words };
  if (words.length > 0) return { ...told, takes: 'words', words };
  return { ...told, takes: placeholder === 'file' || placeholder === 'folder' ? placeholder : 'text', words };
}
