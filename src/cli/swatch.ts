/** A swatch of the computed colour in the terminal. */
import type { Srgb } from '../core/colour/srgb.ts';

/** 256 colours or more: such terminals take 24-bit colour. Not a terminal, NO_COLOR or TERM=dumb: none. FORCE_COLOR: always. */
export function showsColour(stream: NodeJS.WriteStream, environment: NodeJS.ProcessEnv = process.env): boolean {
  const { NO_COLOR, FORCE_COLOR } = environment;
  if (NO_COLOR) return false;
  if (FORCE_COLOR) return FORCE_COLOR !== '0';
  return stream.isTTY === true && stream.getColorDepth(environment) >= 8;
}

/** Two blanks on the colour. */
export function swatch({ r, g, b }: Srgb): string {
  return `\u001b[48;2;${r};${g};${b}m  \u001b[0m`;
}
