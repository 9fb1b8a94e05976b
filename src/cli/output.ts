/** Data goes to standard output, whole, and quietly when the reader (`| head`) has had enough. */
import { writeFileSync } from 'node:fs';
import { Stop } from './stop.ts';

export function write(text: string): void {
  process.stdout.write(text.endsWith('\n') ? text : `${text}\n`);
}

export function writeJson(document: unknown): void {
  write(JSON.stringify(document, undefined, 2));
}

/**
 * @param file a path, or `-` for standard output
 * @param flag the option that names it
 */
export function writeTo(file: string, flag: string, content: string | Buffer): void {
  if (file === '-') {
    process.stdout.write(content);
    return;
  }
  try {
    writeFileSync(file, content);
  } catch (error) {
    const why = (error as NodeJS.ErrnoException).code ?? String(error);
    throw new Stop({ kind: 'failed', field: flag, value: file, message: `${flag} ${file}: can't be written (${why})` });
  }
}

/** A reader that closes the pipe is no fault. */
export function endQuietlyWhenClosed(stream: NodeJS.WriteStream): void {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
    process.exit();
  });
}
