/** Completion for zsh and fish, each word with what it means beside it. */
import { quoted } from './bash.ts';
import type { Place, Taken } from './places.ts';

export function zshScript(places: readonly Place[]): string {
  const paths = places.slice(1).map(({ path }) => quoted(path));
  const described = (all: readonly { readonly word: string; readonly meaning: string }[]) =>
    all.map(({ word, meaning }) => quoted(`${word.replaceAll(':', '\\:')}:${meaning}`)).join(' ');
  const asked = places.flatMap(({ path, options }) =>
    options.flatMap((option) => {
      const act = zshActs[option.takes](option);
      return act === undefined ? [] : [`    ${quoted(`${path} ${option.word}`)}) ${act}; return ;;`];
    }),
  );
  const offered = places.map(
    ({ path, words, options }) =>
      `    ${quoted(path)}) all=(${described([...words, ...options])}); _describe umberpan all; _files ;;`,
  );
  return `#compdef umberpan
# Made by \`umberpan completion zsh\`.
_umberpan() {
  local place=umberpan each
  local -a all
  for each in "\${(@)words[2,CURRENT-1]}"; do
    case "$place $each" in
    ${paths.join('|')}) place="$place $each" ;;
    esac
  done
  case "$place \${words[CURRENT-1]}" in
${asked.join('\n')}
  esac
  case "$place" in
${offered.join('\n')}
  esac
}
if [ "$funcstack[1]" = _umberpan ]; then _umberpan "$@"; else compdef _umberpan umberpan; fi`;
}

const zshActs: Readonly<Record<Taken['takes'], (option: Taken) => string | undefined>> = {
  nothing: () => undefined,
  words: ({ words }) => `compadd -- ${words.map(quoted).join(' ')}`,
  file: () => '_files',
  folder: () => '_files -/',
  text: ({ meaning }) => `_message ${quoted(meaning)}`,
};

export function fishScript(places: readonly Place[]): string {
  const paths = places.slice(1).map(({ path }) => fishQuoted(path));
  const lines = places.flatMap(({ path, words, options }) => [
    ...words.map(({ word, meaning }) => `${at(path)} -a ${fishQuoted(word)} -d ${fishQuoted(meaning)}`),
    ...options.map(
      (option) =>
        `${at(path)} -l ${option.word.replace(/^--/, '')}${fishTakes(option)} -d ${fishQuoted(option.meaning)}`,
    ),
  ]);
  return `# Made by \`umberpan completion fish\`.
function __umberpan_at
  set -l path umberpan
  for each in (commandline -opc)[2..-1]
    if contains -- "$path $each" ${paths.join(' ')}
      set path "$path $each"
    end
  end
  test "$path" = "$argv[1]"
end
${lines.join('\n')}`;
}

const at = (path: string): string => `complete -c umberpan -n ${fishQuoted(`__umberpan_at "${path}"`)}`;

function fishTakes({ takes, words }: Taken): string {
  if (takes === 'nothing') return '';
  if (takes === 'file') return ' -r -F';
  if (takes === 'folder') return " -x -a '(__fish_complete_directories)'";
  return takes === 'words' ? ` -x -a ${fishQuoted(words.join(' '))}` : ' -x';
}

/** Within quotes fish knows \\' and \\\\ alone. */
const fishQuoted = (text: string): string => `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`;
