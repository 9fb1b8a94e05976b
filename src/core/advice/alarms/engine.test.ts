import { describe, expect, test } from 'vitest';
import { type AlarmId, alarmIds } from './catalogue.ts';
import { type AlarmInput, type Alarms, type Condition, longestAsideS, noAlarms, stepAlarms } from './engine.ts';
import { alarmReport } from './report.ts';

const none = Object.fromEntries(alarmIds.map((id) => [id, { active: false }])) as Record<AlarmId, Condition>;
const on = (...ids: AlarmId[]) => ({
  conditions: { ...none, ...Object.fromEntries(ids.map((id) => [id, { active: true }])) },
});
const lost = (...ids: AlarmId[]) => ({
  conditions: { ...none, ...Object.fromEntries(ids.map((id) => [id, { active: null }])) },
});

/** Second by second; `plan` says which conditions hold and what the cook does. */
function run(untilS: number, plan: (t: number) => Partial<AlarmInput>, from: Alarms = noAlarms, fromS = 0) {
  let alarms = from;
  for (let timeS = fromS; timeS <= untilS; timeS++) {
    alarms = stepAlarms(alarms, { timeS, step: 'invert', conditions: none, acts: [], ...plan(timeS) });
  }
  const sounds = alarms.history
    .filter(({ what }) => what.startsWith('sounded'))
    .map(({ timeS, alarm }) => [timeS, alarm]);
  return { alarms, states: alarms.states, sounds };
}
const seen = (alarm: AlarmId) => ({ kind: 'seen', alarm }) as const;
const aside = (alarm: AlarmId, forS: number) => ({ kind: 'putAside', alarm, forS }) as const;

describe('an alarm', () => {
  test('comes when its condition has held for the delay, and sounds once', () => {
    expect(run(60, () => on('aboveBand')).sounds).toEqual([[30, 'aboveBand']]);
    expect(run(200, (t) => (t % 20 < 15 ? on('aboveBand') : {})).sounds).toEqual([]);
  });

  test('goes when its condition has been gone for the delay, and flickering does not end it', () => {
    const held = run(100, (t) => (t < 40 || t % 14 === 0 ? on('aboveBand') : {}));
    expect(held.states.aboveBand.on).toBe(true);
    const gone = run(55, (t) => (t <= 39 ? on('aboveBand') : {}));
    expect(gone.alarms.history.at(-1)).toEqual({ timeS: 55, alarm: 'aboveBand', what: 'went' });
  });

  test('to act now sounds again after 30 s and then each minute, until it is seen', () => {
    const { sounds, states } = run(400, (t) => ({ ...on('foam'), acts: t === 220 ? [seen('foam')] : [] }));
    expect(sounds.map(([t]) => t)).toEqual([0, 30, 90, 150, 210]);
    expect(states.foam.phase).toBe('seen');
  });

  test('that is over but unseen stays until it is seen; one that was seen goes', () => {
    const { alarms } = run(100, (t) => (t < 40 ? on('aboveBand') : {}));
    expect(alarms.states.aboveBand).toMatchObject({ phase: 'gone unseen', on: false });
    expect(run(101, () => ({ acts: [seen('aboveBand')] }), alarms, 101).states.aboveBand.phase).toBe('normal');
    const known = run(100, (t) => ({ ...(t < 40 ? on('aboveBand') : {}), acts: t === 35 ? [seen('aboveBand')] : [] }));
    expect(known.states.aboveBand.phase).toBe('normal');
  });

  test('that comes back is new again, though its last coming was seen', () => {
    const { sounds } = run(200, (t) => ({
      ...(t < 40 || t > 100 ? on('aboveBand') : {}),
      acts: t === 35 ? [seen('aboveBand')] : [],
    }));
    expect(sounds.map(([t]) => t)).toEqual([30, 131]);
  });

  test('whose input is lost stays on and is marked; one that was not on does not come', () => {
    const { states } = run(100, (t) => (t < 40 ? on('aboveBand') : lost('aboveBand', 'belowBand')));
    expect(states.aboveBand).toMatchObject({ phase: 'new', on: true, inputLost: true });
    expect(states.belowBand).toMatchObject({ phase: 'normal', on: false, inputLost: false });
  });

  test('carries the probability behind it', () => {
    const conditions = { ...none, scorch: { active: true, certainty: 0.8 } };
    expect(run(5, () => ({ conditions })).states.scorch.certainty).toBe(0.8);
  });

  test('that the catalogue does not know is passed over', () => {
    const acts = [{ kind: 'seen', alarm: 'ofALaterYear' }] as const;
    expect(stepAlarms(noAlarms, { timeS: 0, step: 'invert', conditions: none, acts }).states).toEqual(noAlarms.states);
  });
});

test('nobody has seen an alarm that comes only now, though they say so of its last coming', () => {
  const before = run(69, (t) => (t < 40 ? on('foam') : {}));
  expect(before.states.foam.phase).toBe('gone unseen');
  const again = stepAlarms(before.alarms, { timeS: 70, step: 'invert', ...on('foam'), acts: [seen('foam')] });
  expect(again).toMatchObject({ sounding: ['foam'], states: { foam: { phase: 'new' } } });
});

describe('an alarm below its cause', () => {
  test('is on and silent, and sounds if it outlasts the cause', () => {
    const { sounds, states } = run(150, (t) => (t < 100 ? on('probeLost', 'aboveBand') : on('aboveBand')));
    expect(sounds).toEqual([
      [0, 'probeLost'],
      [110, 'aboveBand'],
    ]);
    expect(states.aboveBand.silencedBy).toBeNull();
    expect(run(60, () => on('probeLost', 'aboveBand')).states.aboveBand.silencedBy).toBe('probeLost');
  });

  test('and over before the cause asks for nothing', () => {
    const { states } = run(99, (t) => (t < 50 ? on('probeLost', 'aboveBand') : on('probeLost')));
    expect(states.aboveBand.phase).toBe('normal');
  });
});

test('in a step that is not its own an alarm is followed and logged in silence, and sounds if it lasts into one that is', () => {
  const { alarms, sounds, states } = run(60, () => ({ ...on('aboveBand'), step: 'climb' }));
  expect(sounds).toEqual([]);
  expect(states.aboveBand).toMatchObject({ on: true, silencedBy: 'step' });
  expect(alarms.history).toEqual([{ timeS: 30, alarm: 'aboveBand', what: 'came' }]);
  expect(run(61, () => on('aboveBand'), alarms, 61).sounds).toEqual([[61, 'aboveBand']]);
});

describe('an alarm put aside', () => {
  test('comes back by itself, after ten minutes at most', () => {
    const { sounds } = run(900, (t) => ({ ...on('aboveBand'), acts: t === 40 ? [aside('aboveBand', 3600)] : [] }));
    expect(sounds.map(([t]) => t)).toEqual([30, 40 + longestAsideS]);
  });

  test('can’t be put aside for longer by doing it again, but can be taken back', () => {
    const again = (t: number) => ({ ...on('aboveBand'), acts: t === 40 || t === 300 ? [aside('aboveBand', 600)] : [] });
    expect(run(900, again).sounds.map(([t]) => t)).toEqual([30, 640]);
    const back = run(99, (t) => ({
      ...on('aboveBand'),
      acts: t === 40 ? [aside('aboveBand', 600)] : t === 90 ? [aside('aboveBand', 0)] : [],
    }));
    expect(back.sounds.map(([t]) => t)).toEqual([30, 90]);
  });

  test('stays silent however often it comes and goes meanwhile, and is normal afterwards if it is over', () => {
    const { sounds, states } = run(700, (t) => ({
      ...(t < 600 && (t < 41 || t % 100 < 50) ? on('aboveBand') : {}),
      acts: t === 40 ? [aside('aboveBand', 600)] : [],
    }));
    expect(sounds.map(([t]) => t)).toEqual([30]);
    expect(states.aboveBand.phase).toBe('normal');
  });

  test('is never one to act now', () => {
    const { states } = run(50, (t) => ({ ...on('scorch'), acts: t === 10 ? [aside('scorch', 300)] : [] }));
    expect(states.scorch.phase).toBe('new');
  });
});

describe('the report', () => {
  test.each([0, 1])('does not count it as put aside again when it was called back (for %d s)', (forS) => {
    const { alarms, sounds } = run(200, (t) => ({
      ...on('aboveBand'),
      acts: t === 40 ? [aside('aboveBand', 300)] : t === 90 ? [aside('aboveBand', forS)] : [],
    }));
    expect(sounds.map(([t]) => t)).toEqual([30, 90]);
    expect(alarms.history.map(({ what }) => what)).toEqual(['came', 'sounded', 'put aside', 'called back', 'sounded']);
    // Called back and heard at 90, unseen since.
    expect(alarmReport(alarms.history, 200)).toMatchObject({ putAsides: 1, longestUnseenS: 110 });
  });

  test('counts a second putting aside of what came back by itself', () => {
    const { history } = run(300, (t) => ({
      ...on('aboveBand'),
      acts: t === 40 || t === 200 ? [aside('aboveBand', 60)] : [],
    })).alarms;
    expect(history.filter(({ what }) => what.endsWith('back')).map(({ what }) => what)).toEqual(['back', 'back']);
    expect(alarmReport(history, 300).putAsides).toBe(2);
  });

  test('of ten minutes of foam that nobody sees: one alarm, that sounded again ten times', () => {
    const { history } = run(599, () => on('foam')).alarms;
    expect(alarmReport(history, 599)).toMatchObject({ peakInTenMinutes: 1, soundedAgain: 10, longestUnseenS: 599 });
  });

  test('counts what came and sounded, the worst ten minutes, chatterers, the longest unseen and what was put aside', () => {
    const { alarms } = run(1000, (t) => ({
      ...on(
        ...(t % 18 === 0 && t < 50 ? (['foam'] as const) : []),
        ...(t >= 700 && t < 900 ? (['aboveBand'] as const) : []),
      ),
      acts: t === 60 ? [seen('foam')] : t === 780 ? [aside('aboveBand', 60)] : [],
    }));
    expect(alarmReport(alarms.history, 1000)).toEqual({
      came: 4,
      soundedAgain: 0,
      sounded: { 'act now': 3, 'act soon': 2, 'keep in mind': 0 },
      peakInTenMinutes: 3,
      chatterers: ['foam'],
      // Put aside at 780, back and heard again at 840, still unseen at the end.
      longestUnseenS: 160,
      putAsides: 1,
    });
  });
});
