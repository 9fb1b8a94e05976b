/** Where a lot that was made is now: on the server, on this device, or refused. */
import { useWaitingLots } from './waitingLots.ts';

export function LotMade({ id, name }: { readonly id: string; readonly name: string }) {
  const { waiting, onlyHere, sending } = useWaitingLots();
  const mine = waiting.find((each) => each.id === id);
  return (
    <section aria-labelledby="set-made">
      <h3 id="set-made">Lot “{name}”</h3>
      <p role="status">{mine ? wordsOf(mine.refused, onlyHere.includes(id), sending) : 'Kept on the server.'}</p>
    </section>
  );
}

function wordsOf(refused: string | undefined, onlyHere: boolean, sending: boolean): string {
  if (refused !== undefined) return `The server did not take it: ${refused}. It stays on this device.`;
  if (onlyHere) {
    return 'The server does not have it yet, and this browser keeps nothing: leave this page open until it is sent.';
  }
  const kept = 'Kept on this device; not yet on the server.';
  return sending ? `${kept} Sending.` : `${kept} It is sent when the server is back and Umberpan is open here.`;
}
