import { describe, expect, it } from 'vitest';
import { alarmIds } from '../../../../core/advice/alarms/catalogue.ts';
import { type AlarmState, longestAsideS, noAlarms } from '../../../../core/advice/alarms/engine.ts';
import { announcement, asideForS, minutesAndSeconds, moreWords, phaseWords, timeLeftWords } from './alarmWords.ts';

const on: AlarmState = { ...noAlarms.states.foam, phase: 'new', on: true, cameS: 100 };

describe('alarms in words', () => {
  it('count down the time to respond from when it came, and say when it has passed', () => {
    expect(timeLeftWords('scorch', on, 100)).toBe('1:00 left');
    expect(timeLeftWords('scorch', on, 155.2)).toBe('0:05 left');
    expect(timeLeftWords('scorch', on, 175)).toBe('0:15 overdue');
    expect(timeLeftWords('scorch', { ...on, on: false }, 130)).toBe('over');
  });

  it('write minutes and seconds', () => {
    expect([0, 59.5, 60, 245].map(minutesAndSeconds)).toEqual(['0:00', '1:00', '1:00', '4:05']);
  });

  it('say where an alarm is in its life, and that its input is lost', () => {
    expect(phaseWords(on, 100)).toBe('New, not seen yet');
    expect(phaseWords({ ...on, phase: 'put aside', asideUntilS: 400 }, 155)).toBe('Put aside, back in 4:05');
    expect(phaseWords({ ...on, phase: 'put aside', on: false, asideUntilS: 400 }, 155)).toContain('over for now');
    expect(phaseWords({ ...on, phase: 'seen', inputLost: true }, 100)).toMatch(/^Seen, still on\. Input lost/);
  });

  it('say which alarm one is silent for', () => {
    expect(phaseWords({ ...on, silencedBy: 'probeLost' }, 100)).toBe('Silent, because of: Thermometer lost');
  });

  it('announce each alarm without the time that runs', () => {
    for (const id of alarmIds) expect(announcement(id, on)).not.toMatch(/\d:\d\d/);
    expect(announcement('scorch', on)).toBe('Act now: Near scorching. Off the heat now. No water.');
    expect(announcement('scorch', { ...on, on: false })).toBe('Over, and not seen yet: Near scorching.');
  });

  it('say how many more there are, how many of those nobody has seen, and how many are put aside', () => {
    expect(moreWords({ more: 0, moreUnseen: 0, asides: 0 })).toEqual([]);
    expect(moreWords({ more: 2, moreUnseen: 1, asides: 1 })).toEqual(['2 more', '1 not seen', '1 put aside']);
  });

  it('put aside for no longer than the engine allows', () => {
    expect(asideForS).toBeLessThanOrEqual(longestAsideS);
  });
});
