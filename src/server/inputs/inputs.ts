/** The thermometers that the server listens to: kept, started, stopped, and how each does. They are heard without a cook too, so that they can be tried before one. */
import { randomUUID } from 'node:crypto';
import type { CookRecord } from '../../api/cook.ts';
import type { Heard, Input, InputRecord } from '../../api/input.ts';
import type { SteadyClock } from '../cooking/steadyClock.ts';
import type { Devices } from '../devices/devices.ts';
import { bindToCook, cookFor } from '../devices/sending.ts';
import { Refusal } from '../problem.ts';
import { runningCooks } from '../store/cooks.ts';
import { allInputs, keepInput, removeInput } from '../store/inputs.ts';
import type { Store } from '../store/store.ts';
import type { Intake, MarkedReading } from './intake.ts';
import { type Listening, listenTo } from './listening.ts';
import type { OwnBroker } from './ownBroker.ts';

export type Inputs = Awaited<ReturnType<typeof openInputs>>;

interface Parts {
  readonly store: Store;
  readonly intake: Intake;
  readonly clock: SteadyClock;
  readonly devices: Devices;
  /** The server's own, if it was started with one. */
  readonly broker: OwnBroker | undefined;
  readonly warn: (problem: unknown, message: string) => void;
}

interface Known {
  readonly input: Input;
  readonly listening: Listening;
  /** The device that sent last, where one showed a token. */
  from: string | undefined;
}

export async function openInputs({ store, intake, clock, devices, broker, warn }: Parts) {
  const { db } = store;
  const known = new Map<string, Known>();

  async function write(marked: MarkedReading, from: string | undefined) {
    const device = from === undefined ? undefined : devices.ofId(from);
    const cook = device ? await bindToCook(device, devices, store) : cookNow(await runningCooks(db))?.id;
    if (cook) await intake.write(cook, marked);
  }

  function start(id: string, input: Input) {
    const take = (raw: Heard['raw'], from: string | undefined) => {
      const marked = intake.mark(id, input.probe, raw, input.unit);
      each.from = from;
      write(marked, from).catch((error) => {
        if (!(error instanceof Refusal)) return warn(error, `A reading of ${input.name} was not written`);
        // That no cook goes on the list says anyway.
        if (error.kind === 'asleep') each.listening.note(error.message);
      });
      return marked;
    };
    const each: Known = { input, listening: listenTo(input, { take, nowMs: clock.nowMs, broker }), from: undefined };
    known.set(id, each);
  }

  function cookOf({ input, from }: Known, running: readonly CookRecord[]) {
    const device = from === undefined ? undefined : devices.ofId(from);
    const cook = device ? cookFor(device, running) : cookNow(running);
    return cook && input.on ? { id: cook.id, name: cook.name } : null;
  }

  async function change(id: string, input: Input) {
    await keepInput(db, { id, input }, new Date(clock.nowMs()));
    await known.get(id)?.listening.stop();
    start(id, input);
  }

  for (const { id, input } of await allInputs(db)) start(id, input);

  return {
    async list(): Promise<InputRecord[]> {
      const running = await runningCooks(db);
      return [...known].map(([id, each]) => ({
        id,
        input: withoutPassword(each.input),
        status: { ...each.listening.status(), cook: cookOf(each, running) },
      }));
    },

    async add(input: Input): Promise<string> {
      const id = randomUUID();
      await change(id, input);
      return id;
    },

    /** @returns whether there was one */
    async change(id: string, input: Input): Promise<boolean> {
      const before = known.get(id)?.input;
      if (!before) return false;
      await change(id, withPasswordOf(before, input));
      return true;
    },

    async remove(id: string): Promise<boolean> {
      const there = known.get(id);
      if (!there) return false;
      await removeInput(db, id);
      known.delete(id);
      await there.listening.stop();
      return true;
    },

    async stop() {
      await Promise.all([...known.values()].map(({ listening }) => listening.stop()));
    },
  };
}

/** The newest real cook that goes on, an older one was left unended; with none, the newest rehearsal. */
function cookNow(running: readonly CookRecord[]): CookRecord | undefined {
  return running.find(({ mode }) => mode === 'live') ?? running[0];
}

/** A password goes only where it was given for: another broker is not told it. */
function withPasswordOf(before: Input, input: Input): Input {
  if (input.kind !== 'mqtt' || input.password !== undefined) return input;
  const same = before.kind === 'mqtt' && before.broker === input.broker && before.user === input.user;
  return { ...input, password: (same && before.password) || null };
}

function withoutPassword(input: Input): InputRecord['input'] {
  if (input.kind !== 'mqtt') return input;
  const { password, ...rest } = input;
  return { ...rest, hasPassword: Boolean(password) };
}
