// Whole logs against a server in memory, with time and chance in the test's hands.
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, onTestFinished, vi } from 'vitest';
import { begunBody } from '../../../../test/sampleCook.ts';
import type { LogEvent, StampedEvent } from '../../../core/log/event.ts';
import { ProblemError } from '../answer.ts';
import { type CookLog, cookLog } from './cookLog.ts';
import type { CookServer, StreamListener } from './cookServer.ts';
import type { CookStore } from './cookStore.ts';
import type { Clocks } from './deviceClock.ts';
import type { HeldEvent } from './heldEvent.ts';
import { memoryStore } from './memoryStore.ts';
import { sturdyStore } from './sturdyStore.ts';
import { type Device, device } from './thisDevice.ts';

const cook = '0b0e2f4a-6f0f-4a8e-9a53-0d1f6f7b7c04';
const well = { state: 'well', reason: null, waiting: 0, dropped: 0 } as const;

beforeEach(() => {
  vi.useFakeTimers({ now: Date.UTC(2031, 4, 9, 18, 30) });
});
afterEach(() => {
  vi.useRealTimers();
});

const second = (count = 1) => vi.advanceTimersByTimeAsync(count * 1000);

/** A server that can go away, not let the device in, be frozen with its streams open, refuse, and lose what it has. */
function testServer() {
  let events: StampedEvent[] = [];
  let seq = 0;
  const streams = new Set<StreamListener>();
  const server = { isUp: true, letsIn: true, isFrozen: false, refuses: (_: LogEvent) => false };
  const reached = async () => {
    if (server.isFrozen) await new Promise(() => {});
    if (!server.isUp) throw new TypeError('no server');
    if (!server.letsIn) throw problem(401);
  };
  const problem = (status: number) =>
    new ProblemError({ type: '', title: '', status, detail: `refused with ${status}`, instance: '' });
  const write = (sent: readonly LogEvent[]) => {
    if (sent.some(server.refuses)) throw problem(400);
    return sent.map((event) => {
      const known = events.find(({ id }) => id === event.id);
      if (known) return known;
      seq += 1;
      const tServer = new Date().toISOString();
      const stamped = { ...event, seq, tServer, prevHash: `${seq - 1}`, hash: `${seq}` };
      events.push(stamped);
      for (const stream of streams) stream.logged(stamped);
      return stamped;
    });
  };
  const lastSeq = () => events.at(-1)?.seq ?? 0;
  const beats = setInterval(() => {
    if (server.isUp && !server.isFrozen)
      for (const stream of streams) stream.beat({ lastSeq: lastSeq(), storage: well });
  }, 2000);
  onTestFinished(() => clearInterval(beats));
  const asked: CookServer = {
    async begin(begun) {
      await reached();
      return write([begun])[0];
    },
    async send(sent) {
      await reached();
      if (events.length === 0) throw problem(404);
      return write(sent);
    },
    async eventsSince(since) {
      await reached();
      if (events.length === 0) throw problem(404);
      const page = events.filter((event) => event.seq > since).slice(0, 3);
      return { events: page, lastSeq: page.at(-1)?.seq ?? since, more: page.length === 3 };
    },
    follow(since, listener) {
      if (!server.isUp) {
        setTimeout(listener.broken);
        return () => {};
      }
      const first = setTimeout(() => {
        if (since > lastSeq()) return listener.putBack();
        for (const event of events) if (event.seq > since) listener.logged(event);
        streams.add(listener);
        listener.beat({ lastSeq: lastSeq(), storage: well });
      });
      return () => {
        clearTimeout(first);
        streams.delete(listener);
      };
    },
  };
  return Object.assign(server, {
    asked,
    events: () => events,
    goAway() {
      server.isUp = false;
      for (const stream of [...streams]) stream.broken();
    },
    letOut() {
      server.letsIn = false;
      for (const stream of [...streams]) stream.broken();
    },
    /** Puts the store back to how it was when it had so many events. */
    putBack(count: number) {
      events = events.slice(0, count);
      seq = lastSeq();
      for (const stream of [...streams]) stream.broken();
    },
  });
}

const asleep = { ms: 0 };
const clocks: Clocks = { wallMs: () => Date.now(), monoMs: () => Date.now() - Date.UTC(2031, 4, 9) - asleep.ms };

function page(
  server: CookServer,
  store: CookStore = memoryStore(),
  isWriter = true,
  tell: (held: readonly HeldEvent[]) => void = () => {},
) {
  const clock: Device = device(async () => {
    const time = new Date(Date.now() + 1000).toISOString();
    return { received: time, sent: time };
  }, clocks);
  const heard = new Set<(held: readonly HeldEvent[]) => void>();
  let returned = () => {};
  return {
    store,
    hear: (held: readonly HeldEvent[]) => heard.forEach((told) => void told(held)),
    comeBack: () => returned(),
    begin: () => store.append([clock.draft(cook, 'begun', begunBody)]),
    async open(): Promise<CookLog> {
      const log = await cookLog({
        cook,
        store,
        server,
        device: clock,
        clocks,
        tabs: {
          tell,
          listen(told) {
            heard.add(told);
            return () => heard.delete(told);
          },
        },
        claimWriter: async () => ({ isHere: () => isWriter, takeOver: async () => {}, release: () => {} }),
        onReturn(back) {
          returned = back;
          return () => {};
        },
        random: () => 0.5,
      });
      onTestFinished(log.close);
      return log;
    },
  };
}

async function begun(server = testServer(), store?: CookStore) {
  const phone = page(server.asked, store);
  await phone.begin();
  const log = await phone.open();
  await second();
  return { server, phone, log };
}

const ids = (events: readonly { readonly id: string }[]) => events.map(({ id }) => id).toSorted();
const note = (text: string) => ['note', { text }] as const;

describe('a cook on its own', () => {
  it('begins and goes on without a server, and goes there in order when it comes', async () => {
    const server = testServer();
    server.isUp = false;
    const { log } = await begun(server);
    await log.add('heat', { notch: 4 });
    await log.add(...note('foam'));
    expect(log.link()).toMatchObject({ state: 'on its own', ageS: null, waiting: 3, storage: 'memory only' });
    server.isUp = true;
    await second(6);
    expect(log.link()).toMatchObject({ state: 'live', waiting: 0 });
    expect(server.events().map(({ kind }) => kind)).toEqual(['begun', 'heat', 'note']);
    expect(server.events().map(({ deviceSeq }) => deviceSeq)).toEqual([1, 2, 3]);
  });

  it('tells at once what was added, before any server has it', async () => {
    const { server, log } = await begun();
    server.goAway();
    let told = 0;
    log.subscribe(() => {
      told = log.events().length;
    });
    const event = await log.add('heat', { notch: 2 });
    expect(told).toBe(2);
    expect(log.events().at(-1)).toEqual(event);
  });

  it('has lost nothing after the page was closed', async () => {
    const { server, phone, log } = await begun();
    server.goAway();
    await log.add('heat', { notch: 2 });
    log.close();
    const again = await phone.open();
    expect(again.link().waiting).toBe(1);
    server.isUp = true;
    await second(6);
    expect(server.events().map(({ kind }) => kind)).toEqual(['begun', 'heat']);
    expect(await phone.store.cooks()).toMatchObject([
      { id: cook, name: (begunBody.request as { name: string }).name, ended: null },
    ]);
  });

  it('is listed as ended when it is, and no more when that is struck out', async () => {
    const { phone, log } = await begun();
    const end = await log.add('ended', { how: 'done' });
    expect(await phone.store.cooks()).toMatchObject([{ ended: 'done' }]);
    await log.add('correction', { corrects: end.id, kind: 'ended', body: null });
    expect(await phone.store.cooks()).toMatchObject([{ ended: null }]);
  });
});

describe('whether it is live', () => {
  it('is told by beats alone: silence of six seconds ends it, whatever the stream looks like', async () => {
    const { server, log } = await begun();
    expect(log.link().state).toBe('live');
    server.isFrozen = true;
    await second(4);
    expect(log.link().state).toBe('live');
    await second(4);
    expect(log.link().state).toBe('on its own');
    expect(log.link().ageS).toBeGreaterThanOrEqual(6);
  });

  it('is not said before what was missed is there', async () => {
    const { server, log } = await begun();
    const other = await page(server.asked).open();
    await second();
    server.goAway();
    for (let count = 0; count < 8; count++) await other.add(...note(`${count}`));
    log.close();
    server.isUp = true;
    await second(10);
    const states: string[] = [];
    const late = await page(server.asked).open();
    late.subscribe(() => states.push(`${late.link().state} ${late.events().length}`));
    await second();
    expect([...new Set(states.filter((state) => state.startsWith('live')))]).toEqual([
      `live ${server.events().length}`,
    ]);
    expect(states[0]).toMatch(/^catching up/);
  });

  it('comes back for ever after an outage, and at once when the page returns', async () => {
    const { server, phone, log } = await begun();
    server.goAway();
    await second(3600);
    expect(log.link().state).toBe('on its own');
    server.isUp = true;
    phone.comeBack();
    await second(0.1);
    expect(log.link().state).toBe('live');
    server.goAway();
    await second(600);
    server.isUp = true;
    await second(11);
    expect(log.link().state).toBe('live');
  });
});

describe('a device that is not let in', () => {
  it('keeps what is done, says why it waits, and sends it once it is let in', async () => {
    const server = testServer();
    server.letsIn = false;
    const { phone, log } = await begun(server);
    await log.add('heat', { notch: 4 });
    await second(6);
    expect(log.link()).toMatchObject({ state: 'not let in', waiting: 2, refused: 0 });
    server.isUp = false;
    await second(6);
    expect(log.link().state).toBe('on its own');
    server.isUp = server.letsIn = true;
    phone.comeBack();
    await second();
    expect(log.link()).toMatchObject({ state: 'live', waiting: 0 });
    expect(server.events().map(({ kind }) => kind)).toEqual(['begun', 'heat']);
  });

  it('that is let out in the middle of a cook says so within a second, and goes on by itself', async () => {
    const { server, phone, log } = await begun();
    server.letOut();
    await second();
    expect(log.link().state).toBe('not let in');
    await log.add('heat', { notch: 4 });
    await second(20);
    expect(log.link()).toMatchObject({ state: 'not let in', waiting: 1 });
    expect(server.events()).toHaveLength(1);
    server.letsIn = true;
    phone.comeBack();
    await second();
    expect(log.link()).toMatchObject({ state: 'live', waiting: 0 });
  });

  it('says the same of a cook of others that it is to look at', async () => {
    const { server } = await begun();
    server.letsIn = false;
    const other = await page(server.asked).open();
    await second(3);
    expect(other.link()).toMatchObject({ state: 'not let in', waiting: 0 });
  });
});

describe('the server and the device do not agree', () => {
  it('a cook that neither has is not waited for without a word; it may come yet', async () => {
    const server = testServer();
    const log = await page(server.asked).open();
    await second(3);
    expect(log.link()).toMatchObject({ state: 'unknown', waiting: 0 });
    await begun(server);
    await second(30);
    expect(log.link().state).toBe('live');
  });

  it('an event that is refused is told, and holds up nothing', async () => {
    const { server, log } = await begun();
    server.refuses = ({ kind }) => kind === 'heat';
    await log.add('heat', { notch: 2 });
    await log.add(...note('after'));
    await second(1);
    expect(log.refused()).toMatchObject([{ event: { kind: 'heat' }, reason: 'refused with 400' }]);
    expect(log.link()).toMatchObject({ waiting: 0, refused: 1 });
    expect(server.events().map(({ kind }) => kind)).toEqual(['begun', 'note']);
  });

  it.each([1, 2, 0])('what a server lost that was put back to %d events comes to it again', async (left) => {
    const { server, log } = await begun();
    for (const text of ['a', 'b', 'c']) await log.add(...note(text));
    await second(1);
    expect(server.events()).toHaveLength(4);
    server.putBack(left);
    await second(20);
    expect(ids(server.events())).toEqual(ids(log.events()));
    expect(server.events()).toHaveLength(4);
    expect(log.link()).toMatchObject({ state: 'live', waiting: 0 });
  });
});

describe('the clock of an event', () => {
  it('is measured against the server, and after a sleep starts a new run, of which the log tells', async () => {
    const { log } = await begun();
    const before = await log.add('stir', {});
    expect(before).toMatchObject({ clockOffsetMs: 1000, clockErrMs: 1 });
    asleep.ms += 60_000;
    vi.setSystemTime(Date.now() + 60_000);
    const after = await log.add('stir', {});
    expect(after.bootId).not.toBe(before.bootId);
    expect(after.deviceSeq).toBe(before.deviceSeq + 2);
    expect(log.events().at(-2)).toMatchObject({ kind: 'clock', bootId: after.bootId, clockOffsetMs: null });
    await second();
    expect(await log.add('stir', {})).toMatchObject({ bootId: after.bootId, clockOffsetMs: 1000 });
  });
});

describe('a second tab', () => {
  it('reads what the first writes, at once and without a server, and may not write', async () => {
    const server = testServer();
    server.isUp = false;
    const store = memoryStore();
    const reader = page(server.asked, store, false);
    const writer = page(server.asked, store, true, reader.hear);
    await writer.begin();
    const [writing, reading] = [await writer.open(), await reader.open()];
    const event = await writing.add('heat', { notch: 3 });
    expect(reading.events().at(-1)).toEqual(event);
    expect([writing.writer(), reading.writer()]).toEqual(['here', 'elsewhere']);
    await expect(reading.add('heat', { notch: 4 })).rejects.toThrow(/another tab/);
    server.isUp = true;
    await second(12);
    expect(reading.link()).toMatchObject({ state: 'live', waiting: 0 });
  });
});

it('whatever the server, the pages and the storage do, in the end everybody has every event, once', async () => {
  const step = fc.oneof(
    fc.record({ what: fc.constantFrom('add', 'reload', 'reload now' as const), who: fc.nat(1) }),
    fc.record({ what: fc.constantFrom('away', 'up', 'wait', 'full', 'room', 'back' as const), who: fc.constant(0) }),
  );
  const property = fc.asyncProperty(fc.array(step, { maxLength: 40 }), async (steps) => {
    const server = testServer();
    const durable = memoryStore();
    let full = false;
    const append: CookStore['append'] = (drafts) =>
      full ? Promise.reject(new DOMException('no room', 'QuotaExceededError')) : durable.append(drafts);
    const pages = [page(server.asked, sturdyStore({ ...durable, append })), page(server.asked)];
    await pages[0].begin();
    const logs = [await pages[0].open(), await pages[1].open()];
    const made = [...logs[0].events().map(({ id }) => id)];
    for (const { what, who } of steps) {
      if (what === 'add') made.push((await logs[who].add(...note(what))).id);
      if (what === 'away') server.goAway();
      if (what === 'up') server.isUp = true;
      if (what === 'wait') await second(3);
      if (what === 'full') full = true;
      if (what === 'room') full = false;
      if (what === 'back') pages[who].comeBack();
      if (what.startsWith('reload')) {
        if (what === 'reload') await second(0.01);
        logs[who].close();
        logs[who] = await pages[who].open();
      }
    }
    server.isUp = true;
    await second(25);
    expect(ids(server.events())).toEqual(made.toSorted());
    for (const log of logs) {
      expect(ids(log.events())).toEqual(made.toSorted());
      expect(log.link()).toMatchObject({ state: 'live', waiting: 0, refused: 0 });
      log.close();
    }
  });
  await fc.assert(property, { numRuns: 60 });
}, 60_000);
