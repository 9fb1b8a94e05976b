/** The thermometers that the server listens to: kept, started, stopped, and how each does. They are heard without a cook too, so that they can be tried before one. */
import { randomUUID } from 'node:crypto';
import type { Heard, Input, InputRecord } from '../../api/input.ts';
import type { SteadyClock } from '../cooking/steadyClock.ts';
import { runningCooks } from '../store/cooks.ts';
import { allInputs, keepInput, removeInput } from '../store/inputs.ts';
import type { Store } from '../store/store.ts';
import type { Intake, MarkedReading } from './intake.ts';
import { type Listening, listenTo } from './listening.ts';

export type Inputs = Awaited<ReturnType<typeof openInputs>>;

interface Parts {
  readonly store: Store;
  readonly intake: Intake;
  readonly clock: SteadyClock;
  readonly warn: (problem: unknown, message: string) => void;
}

export async function openInputs({ store, intake, clock, warn }: Parts) {
  const { db } = store;
  const known = new Map<string, { readonly input: Input; readonly listening: Listening }>();

  /** The newest of those that go on: an older one was left unended. */
  const cookNow = async () => (await runningCooks(db))[0];

  async function write(marked: MarkedReading) {
    const cook = await cookNow();
    if (cook) await intake.write(cook.id, marked);
  }

  function start(id: string, input: Input) {
    const take = (raw: Heard['raw']) => {
      const marked = intake.mark(id, input.probe, raw, input.unit);
      write(marked).catch((error) => warn(error, `A reading of ${input.name} was not written`));
      return marked;
    };
    known.set(id, { input, listening: listenTo(input, take, clock.nowMs) });
  }

  async function change(id: string, input: Input) {
    await keepInput(db, { id, input }, new Date(clock.nowMs()));
    await known.get(id)?.listening.stop();
    start(id, input);
  }

  for (const { id, input } of await allInputs(db)) start(id, input);

  return {
    async list(): Promise<InputRecord[]> {
      const running = await cookNow();
      const cook = running ? { id: running.id, name: running.name } : null;
      return [...known].map(([id, { input, listening }]) => ({
        id,
        input: withoutPassword(input),
        status: { ...listening.status(), cook: input.on ? cook : null },
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
