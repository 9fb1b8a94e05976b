/** A stream of server-sent events that is asked for with this device's pass, which the browser's own reader can not show. */
import { ask } from './pass.ts';

export interface StreamListeners {
  /** By the name of the event. */
  readonly told: Readonly<Record<string, (data: never) => void>>;
  /** It ended, was refused or was never reached. */
  readonly broken: () => void;
}

/** @returns the way to close it, after which nothing is told any more */
export function openStream(address: string, { told, broken }: StreamListeners): () => void {
  const leaving = new AbortController();
  const { signal } = leaving;
  const read = async () => {
    const answer = await ask(address, { headers: { accept: 'text/event-stream' }, signal, cache: 'no-store' });
    if (!answer.ok || !answer.body) return;
    const tell = blockReader(told);
    const reader = answer.body.pipeThrough(new TextDecoderStream()).getReader();
    for (let piece = await reader.read(); !piece.done; piece = await reader.read()) tell(piece.value);
  };
  const end = () => !signal.aborted && broken();
  read().then(end, end);
  return () => leaving.abort();
}

/** Takes a stream's text piece by piece and tells each event once it is whole (HTML Standard, section 9.2.6, as far as this server uses it). */
export function blockReader(told: StreamListeners['told']): (piece: string) => void {
  let waiting = '';
  return (piece) => {
    const blocks = (waiting + piece).split('\n\n');
    waiting = blocks.pop() ?? '';
    for (const block of blocks) {
      const lines = block.split('\n');
      const event = lines.find((line) => line.startsWith('event: '))?.slice(7);
      const data = lines.find((line) => line.startsWith('data: '))?.slice(6);
      if (event !== undefined && data !== undefined) told[event]?.(JSON.parse(data) as never);
    }
  };
}
