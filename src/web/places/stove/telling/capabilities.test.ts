import { describe, expect, it } from 'vitest';
import { type CapabilityName, capabilities, type DeviceFacts } from './capabilities.ts';
import { tellingWords } from './tellingWords.ts';

const best: DeviceFacts = {
  secure: true,
  sound: 'on',
  heard: { answer: 'yes', day: '2026-03-14' },
  canVibrate: true,
  vibration: true,
  voice: 'on',
  screen: 'asked',
  offline: 'ready',
  entries: 'tested',
  lasting: 'yes',
};

const told = (facts: Partial<DeviceFacts>, name: CapabilityName) => {
  const found = capabilities({ ...best, ...facts }).find((each) => each.name === name);
  if (!found) throw new Error(name);
  return found;
};

describe('this device can', () => {
  it('never claim that it shakes, speaks or keeps the screen on: only that it was asked', () => {
    for (const name of ['vibration', 'voice', 'screen'] as const) expect(told({}, name).state).toBe('asked');
  });

  it('be heard only when somebody has said so at the stove', () => {
    expect(told({}, 'sound').state).toBe('tested');
    expect(told({ heard: null }, 'sound').state).toBe('not tried');
    expect(told({ heard: { answer: 'no', day: '2026-03-14' } }, 'sound').state).toBe('lost');
    expect(told({ sound: 'off' }, 'sound').state).toBe('off');
    expect(told({ sound: 'not available' }, 'sound').state).toBe('not available');
  });

  it('by plain http in the home network: says what is missing, why, and what to do instead', () => {
    const plain = {
      secure: false,
      screen: 'not available',
      offline: 'not available',
      lasting: 'not available',
    } as const;
    expect(told(plain, 'screen').words).toMatch(/Plain http .* timeout to 30 min/);
    expect(told(plain, 'offline').words).toMatch(/Plain http .* Don’t close or reload/);
    expect(told(plain, 'entries')).toMatchObject({ state: 'tested', words: expect.stringMatching(/save the cook/) });
  });

  it('say what to do whenever something is lost or not available', () => {
    const worst = capabilities({
      ...best,
      sound: 'not available',
      canVibrate: false,
      voice: 'not available',
      screen: 'lost',
      offline: 'not available',
      entries: 'failed',
    });
    for (const { state, words } of worst) {
      expect(['lost', 'not available']).toContain(state);
      expect(words.length).toBeGreaterThan(20);
    }
  });
});

describe('how it tells now', () => {
  const now = { sound: 'on', voice: 'on', screen: 'asked', mutedForS: 0 } as const;
  const settings = { voice: true, screen: true, heard: best.heard };

  it('is said in a line', () => {
    expect(tellingWords({ ...now, settings })).toBe('Sound is on.');
    expect(tellingWords({ ...now, settings: { ...settings, heard: null } })).toMatch(/not yet tested/);
    expect(tellingWords({ ...now, settings, mutedForS: 20 })).toBe('Muted.');
    expect(tellingWords({ ...now, settings, sound: 'not available', voice: 'not available', screen: 'lost' })).toBe(
      'Sound is not available here: watch the card. No voice here. The screen may go dark.',
    );
  });
});
