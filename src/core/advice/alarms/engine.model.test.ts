// The state machine against a small reference machine that counts seconds down, driven by random commands.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { StepKind } from '../../pan/steps.ts';
import { type AlarmId, type AlarmKind, alarmCatalogue, alarmIds } from './catalogue.ts';
import { type AlarmAct, type AlarmPhase, type Alarms, type Condition, noAlarms, stepAlarms } from './engine.ts';

interface Counter {
  raw: boolean | null;
  on: boolean;
  shown: AlarmPhase;
  /** Seconds that the condition has spoken against `on`; -1: it agrees. */
  against: number;
  asideLeft: number;
  untilSound: number;
  heard: number;
}

interface Model {
  step: StepKind;
  counters: Map<AlarmId, Counter>;
}

interface Real {
  alarms: Alarms;
  timeS: number;
}

const kindOf = (id: AlarmId): AlarmKind => alarmCatalogue[id];
const isNow = (id: AlarmId): boolean => kindOf(id).priority === 'act now';

function firstCounters(): Map<AlarmId, Counter> {
  const idle = { raw: false, on: false, shown: 'normal', against: -1, asideLeft: 0, untilSound: 0, heard: 0 } as const;
  return new Map(alarmIds.map((id) => [id, { ...idle }]));
}

/** One second of the reference machine: which alarms sound. */
function tick({ step, counters }: Model, acts: readonly AlarmAct[]): AlarmId[] {
  for (const [id, c] of counters) {
    c.asideLeft--;
    for (const act of acts) {
      if (act.alarm !== id) continue;
      if (act.kind === 'seen' && c.shown === 'gone unseen') c.shown = 'normal';
      else if (act.kind === 'seen' && c.shown === 'new') c.shown = 'seen';
      else if (act.kind === 'putAside' && c.on && !isNow(id)) {
        c.asideLeft = Math.min(
          600,
          act.forS > 1 ? act.forS : c.shown === 'put aside' ? 0 : act.forS,
          c.shown === 'put aside' ? c.asideLeft : 600,
        );
        c.shown = 'put aside';
      }
    }
    if (c.shown === 'put aside' && c.asideLeft <= 0) {
      c.shown = c.on ? 'new' : 'normal';
      c.heard = c.untilSound = 0;
    }
    c.against = c.raw === null || c.raw === c.on ? -1 : c.against + 1;
    if (c.against >= (c.on ? kindOf(id).offDelayS : kindOf(id).onDelayS) && c.against >= 0) {
      c.on = !c.on;
      c.against = -1;
      if (c.shown !== 'put aside') c.shown = c.on ? 'new' : c.shown === 'new' && c.heard > 0 ? 'gone unseen' : 'normal';
      if (c.on) c.heard = c.untilSound = 0;
    }
  }
  const sounding: AlarmId[] = [];
  for (const [id, c] of counters) {
    c.untilSound--;
    const grouped = alarmIds.some(
      (cause) => kindOf(id).causedBy.includes(cause) && counters.get(cause)?.on && kindOf(cause).steps.includes(step),
    );
    const due = c.heard === 0 || (isNow(id) && c.untilSound <= 0);
    if (c.shown !== 'new' || !due || grouped || !kindOf(id).steps.includes(step)) continue;
    sounding.push(id);
    c.untilSound = c.heard === 0 ? 30 : 60;
    c.heard++;
  }
  return sounding;
}

function pass(model: Model, real: Real, seconds: number, acts: readonly AlarmAct[]): void {
  for (let s = 0; s < seconds; s++) {
    const first = s === 0 ? acts : [];
    const conditions = Object.fromEntries(
      [...model.counters].map(([id, { raw }]): [string, Condition] => [id, { active: raw }]),
    ) as Record<AlarmId, Condition>;
    real.timeS++;
    real.alarms = stepAlarms(real.alarms, { timeS: real.timeS, step: model.step, conditions, acts: first });
    if (String(real.alarms.sounding) !== String(tick(model, first))) expect.fail(`sounds differ at ${real.timeS} s`);
  }
  for (const [id, { on, shown }] of model.counters) {
    expect(real.alarms.states[id], `${id} at ${real.timeS} s`).toMatchObject({ on, phase: shown });
  }
}

type Command = fc.Command<Model, Real>;
const command = (name: string, run: (m: Model, r: Real) => void): Command => ({
  check: () => true,
  run,
  toString: () => name,
});
const anyAlarm = fc.constantFrom(...alarmIds);
const commands = [
  fc.tuple(anyAlarm, fc.constantFrom(true, true, false, null)).map(([id, raw]) =>
    command(`${id} is ${raw}`, (m, r) => {
      (m.counters.get(id) as Counter).raw = raw;
      pass(m, r, 1, []);
    }),
  ),
  fc.integer({ min: 1, max: 120 }).map((s) => command(`wait ${s} s`, (m, r) => pass(m, r, s, []))),
  anyAlarm.map((alarm) => command(`see ${alarm}`, (m, r) => pass(m, r, 1, [{ kind: 'seen', alarm }]))),
  fc
    .tuple(anyAlarm, fc.integer({ min: 0, max: 900 }))
    .map(([alarm, forS]) =>
      command(`put ${alarm} aside for ${forS} s`, (m, r) => pass(m, r, 1, [{ kind: 'putAside', alarm, forS }])),
    ),
  fc.constantFrom<StepKind>('climb', 'invert', 'roast', 'cast').map((step) =>
    command(`begin ${step}`, (m, r) => {
      m.step = step;
      pass(m, r, 1, []);
    }),
  ),
];

test('alarms live as the reference machine does, whatever is true and whatever the cook does', () => {
  fc.assert(
    fc.property(fc.commands(commands, { maxCommands: 80, size: 'max' }), (list) => {
      const setup = () => ({
        model: { step: 'invert' as StepKind, counters: firstCounters() },
        real: { alarms: noAlarms, timeS: 0 },
      });
      fc.modelRun(setup, list);
    }),
    { numRuns: 150 },
  );
}, 60_000);
