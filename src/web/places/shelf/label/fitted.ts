/** Text that is cut to fit a label: no renderer tells widths beforehand, so each letter is taken as wide as a wide one. */

/** Width of a letter as a share of its size, on the safe side for the face that is used. */
const letter = 0.56;

/** @returns at most `lines` lines; the last ends in … when something is left out */
export function fitted(text: string, width: number, size: number, lines: number): readonly string[] {
  const most = Math.max(4, Math.floor(width / (letter * size)));
  const broken: string[] = [];
  let rest = text.trim();
  while (rest.length > most && broken.length < lines - 1) {
    const blank = rest.lastIndexOf(' ', most);
    const at = blank > most / 3 ? blank : most;
    broken.push(rest.slice(0, at).trim());
    rest = rest.slice(at).trim();
  }
  broken.push(rest.length > most ? `${rest.slice(0, most - 1).trim()}…` : rest);
  return broken;
}
