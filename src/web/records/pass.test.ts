import { afterEach, expect, it, vi } from 'vitest';
import { ask, holdPass, onPassChange, passHeld } from './pass.ts';

afterEach(() => vi.unstubAllGlobals());

function server(status: number) {
  let shown: string | null = null;
  vi.stubGlobal('fetch', async (_: string, { headers }: RequestInit) => {
    shown = new Headers(headers).get('authorization');
    return new Response('{}', { status });
  });
  return () => shown;
}

it('is shown with each question, until the server does not know it any more; who waits for that is called once', async () => {
  const changed = vi.fn();
  const stop = onPassChange(changed);
  const shown = server(200);
  await ask('/api/kits');
  expect(shown()).toBeNull();
  holdPass('plum');
  await ask('/api/kits');
  expect([shown(), changed.mock.calls.length]).toEqual(['Bearer plum', 1]);
  server(401);
  await Promise.all([ask('/api/kits'), ask('/api/plans')]);
  expect([passHeld(), changed.mock.calls.length]).toEqual([false, 2]);
  await ask('/api/kits');
  expect(changed).toHaveBeenCalledTimes(2);
  stop();
  holdPass('pear');
  expect(changed).toHaveBeenCalledTimes(2);
});
