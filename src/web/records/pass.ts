/** This device's pass to the server: the token that it was told when it was paired. On the machine that serves there is none. */
import { keep, kept } from '../parts/browserStorage.ts';
import { heldValue } from '../parts/heldValue.ts';

const key = 'umberpan.pass';

const held = heldValue(kept(key) ?? '');

export const passHeld = (): boolean => held.now() !== '';

export function holdPass(token: string): void {
  keep(key, token);
  held.become(token);
}

/** Calls back when this device is let in or out; returns the way to stop. */
export const onPassChange = held.subscribe;

/** Has this page use the pass that another tab of this browser was told, or lost; for as long as it is open. */
export function followOtherTabs(): void {
  addEventListener('storage', (event) => {
    if (event.key === key) held.become(event.newValue ?? '');
  });
}

/**
 * Asks the server as this device: the one way to it, for questions, streams and files alike.
 * @throws TypeError when it is not reached
 */
export async function ask(address: string, { headers, ...init }: AskInit = {}): Promise<Response> {
  const token = held.now();
  const answer = await fetch(address, {
    ...init,
    headers: { ...headers, ...(token && { authorization: `Bearer ${token}` }) },
  });
  // Let out: from here on it is a stranger, and on the machine that serves its owner again.
  if (answer.status === 401 && token && token === held.now()) holdPass('');
  return answer;
}

interface AskInit extends Omit<RequestInit, 'headers'> {
  readonly headers?: Readonly<Record<string, string>>;
}
