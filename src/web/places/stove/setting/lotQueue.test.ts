import { expect, it, vi } from 'vitest';
import type { NewLot } from '../../../../api/lot.ts';
import type { Problem } from '../../../../api/problem.ts';
import { ProblemError } from '../../../records/answer.ts';
import { createLotQueue } from './lotQueue.ts';

const lot = { name: 'Plum shards', form: 'hard' } as NewLot;
const away = () => Promise.reject(new TypeError('fetch failed'));
const saysNo = (status: number) => () =>
  Promise.reject(new ProblemError({ status, detail: 'form is "powder"' } as Problem));

/** What a browser keeps beyond the page. */
function storage(refuses = false) {
  let text: string | null = null;
  return {
    read: () => text,
    write(next: string) {
      if (!refuses) text = next;
    },
  };
}

const idsOf = (queue: ReturnType<typeof createLotQueue>) => queue.state().waiting.map(({ id }) => id);

it('writes a lot down before it is sent, and strikes it out when the server has it', async () => {
  const disk = storage();
  const post = vi.fn(async () => expect(disk.read()).toContain('"id":"a"'));
  const queue = createLotQueue({ ...disk, post });
  await queue.add('a', lot);
  expect(post).toHaveBeenCalledExactlyOnceWith('a', lot);
  expect(queue.state()).toEqual({ waiting: [], onlyHere: [], sending: false });
  expect(disk.read()).toBe('[]');
});

it('keeps lots while the server is away, over a reload, and sends them in order when it is back', async () => {
  const disk = storage();
  const first = createLotQueue({ ...disk, post: away });
  await first.add('a', lot);
  await first.add('b', lot);
  expect(idsOf(first)).toEqual(['a', 'b']);
  const order: string[] = [];
  const reloaded = createLotQueue({ ...disk, post: async (id) => order.push(id) });
  expect(idsOf(reloaded)).toEqual(['a', 'b']);
  await reloaded.send();
  expect(order).toEqual(['a', 'b']);
  expect(idsOf(reloaded)).toEqual([]);
});

it('waits on when the server fails, is busy or does not let this device in, and does not send again what it refused', async () => {
  for (const status of [500, 503, 429, 401, 403]) {
    const queue = createLotQueue({ ...storage(), post: saysNo(status) });
    await queue.add('a', lot);
    expect(queue.state().waiting).toEqual([{ id: 'a', lot }]);
  }
  const post = vi.fn(saysNo(400));
  const queue = createLotQueue({ ...storage(), post });
  await queue.add('a', lot);
  await queue.send();
  expect(post).toHaveBeenCalledTimes(1);
  expect(queue.state().waiting).toEqual([{ id: 'a', lot, refused: 'form is "powder"' }]);
});

it('one that is refused does not hold up the next', async () => {
  const post = vi.fn(async (id: string) => (id === 'a' ? saysNo(400)() : undefined));
  const queue = createLotQueue({ ...storage(), post });
  await queue.add('a', lot);
  await queue.add('b', lot);
  expect(idsOf(queue)).toEqual(['a']);
});

it('a browser that keeps nothing holds the lot in the page, and says so', async () => {
  const disk = storage(true);
  let there = false;
  const queue = createLotQueue({ ...disk, post: async () => (there ? undefined : away()) });
  await queue.add('a', lot);
  expect(queue.state()).toMatchObject({ waiting: [{ id: 'a' }], onlyHere: ['a'] });
  there = true;
  await queue.send();
  expect(queue.state()).toMatchObject({ waiting: [], onlyHere: [] });
});

it('sends one at a time, also when asked twice at once', async () => {
  const disk = storage();
  await createLotQueue({ ...disk, post: away }).add('a', lot);
  const post = vi.fn(() => new Promise((resolve) => setTimeout(resolve, 5)));
  const queue = createLotQueue({ ...disk, post });
  await Promise.all([queue.send(), queue.send()]);
  expect(post).toHaveBeenCalledTimes(1);
});

it('starts empty over what it can’t read', () => {
  const disk = storage();
  disk.write('{"no": list');
  expect(createLotQueue({ ...disk, post: away }).state().waiting).toEqual([]);
});

it('tells those who listen of every change', async () => {
  const queue = createLotQueue({ ...storage(), post: away });
  const seen: number[] = [];
  const stop = queue.subscribe(() => seen.push(queue.state().waiting.length));
  await queue.add('a', lot);
  expect(seen).toContain(1);
  stop();
  const before = seen.length;
  await queue.send();
  expect(seen).toHaveLength(before);
});
