/** Completion for bash 3.2 and later, as a script to be sourced. */
import type { Place, Taken } from './places.ts';

export function bashScript(places: readonly Place[]): string {
  const paths = places.slice(1).map(({ path }) => quoted(path));
  const asked = (takes: Taken['takes']) =>
    places.flatMap(({ path, options }) =>
      options.filter((option) => option.takes === takes).map(({ word }) => quoted(`${path} ${word}`)),
    );
  const chosen = places.flatMap(({ path, options }) =>
    options
      .filter(({ takes }) => takes === 'words')
      .map(({ word, words }) => `    ${quoted(`${path} ${word}`)}) offer ${quoted(words.join(' '))}; return ;;`),
  );
  const offered = places.map(({ path, words, options }) => {
    const all = [...words, ...options].map(({ word }) => word);
    return `    ${quoted(path)}) offer ${quoted(all.join(' '))} ;;`;
  });
  return `# Made by \`umberpan completion bash\`.
_umberpan() {
  local word="\${COMP_WORDS[COMP_CWORD]}" before="\${COMP_WORDS[COMP_CWORD - 1]}" path=umberpan i
  # bash parts --option=word at the sign.
  if [ "$word" = = ]; then
    word=
  elif [ "$before" = = ]; then
    before="\${COMP_WORDS[COMP_CWORD - 2]}"
  fi
  offer() { COMPREPLY=($(compgen -W "$1" -- "$word")); }
  for ((i = 1; i < COMP_CWORD; i++)); do
    case "$path \${COMP_WORDS[i]}" in
    ${paths.join(' | ')}) path="$path \${COMP_WORDS[i]}" ;;
    esac
  done
  COMPREPLY=()
  case "$path $before" in
${chosen.join('\n')}
    ${asked('file').join(' | ')}) return ;;
    ${asked('folder').join(' | ')}) compopt -o dirnames +o default 2>/dev/null; return ;;
    ${asked('text').join(' | ')}) compopt +o default 2>/dev/null; return ;;
  esac
  case "$path" in
${offered.join('\n')}
  esac
}
complete -o default -F _umberpan umberpan`;
}

/** Within quotes such a shell knows nothing but their end. */
export const quoted = (text: string): string => `'${text.replaceAll("'", "'\\''")}'`;
