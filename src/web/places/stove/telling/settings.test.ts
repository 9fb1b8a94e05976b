import { describe, expect, it } from 'vitest';
import { tellingFrom, usualTelling } from './settings.ts';

describe('how this device tells', () => {
  it('is as usual, sound off, when nothing or nonsense is kept', () => {
    expect(usualTelling.sound).toBe(false);
    for (const text of [null, '', '{', '3', 'null', '[]', '{"sound":"yes","heard":{"answer":"maybe","day":"x"}}'])
      expect(tellingFrom(text)).toEqual(usualTelling);
  });

  it('is what was kept', () => {
    const kept = { ...usualTelling, sound: true, voice: true, heard: { answer: 'yes', day: '2026-03-14' } } as const;
    expect(tellingFrom(JSON.stringify(kept))).toEqual(kept);
  });
});
