/** Data goes to standard output, whole, and quietly when the reader (`| head`) has had enough. */

export function write(text: string): void {
  process.stdout.write(text.endsWith('\n') ? text : `${text}\n`);
}

export function writeJson(document: unknown): void {
  write(JSON.stringify(document, undefined, 2));
}

/** A reader that closes the pipe is no fault. */
export function endQuietlyWhenClosed(stream: NodeJS.WriteStream): void {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
    process.exit();
  });
}
