import { describe, expect, it } from 'vitest';
import { createVoice, hasVoices, rankOfSaying } from './voice.ts';

/** A device that says nothing: the test ends each utterance, or makes it fail. */
function device() {
  const calls: string[] = [];
  const spoken: SpeechSynthesisUtterance[] = [];
  let failures = 0;
  const speech = {
    speak(utterance: SpeechSynthesisUtterance) {
      calls.push(utterance.text);
      spoken.push(utterance);
    },
    cancel: () => calls.push('(cancelled)'),
  } as unknown as SpeechSynthesis;
  const utteranceOf = (text: string) => ({ text }) as SpeechSynthesisUtterance;
  const voice = createVoice(speech, utteranceOf, () => failures++);
  return {
    voice,
    calls,
    failures: () => failures,
    end: (i: number) => spoken[i]?.onend?.({} as never),
    fail: (i: number, error: string) => spoken[i]?.onerror?.({ error } as never),
  };
}

const { 'act now': now, 'act soon': soon, advice } = rankOfSaying;

describe('the voice', () => {
  it('cuts in with what must be done now', () => {
    const { voice, calls } = device();
    voice.say('Stir.', advice);
    voice.say('Off the heat now.', now);
    expect(calls).toEqual(['Stir.', '(cancelled)', 'Off the heat now.']);
  });

  it('lets what must be done now be said to its end', () => {
    const { voice, calls, end } = device();
    voice.say('Off the heat now.', now);
    voice.say('Check the probe.', soon);
    voice.say('Stir.', advice);
    expect(calls).toEqual(['Off the heat now.']);
    end(0);
    expect(calls).toEqual(['Off the heat now.', 'Check the probe.']);
  });

  it('never says advice that is out of date', () => {
    const { voice, calls, end } = device();
    voice.say('Turn up.', advice);
    voice.say('Turn down.', advice);
    expect(calls).toEqual(['Turn up.', '(cancelled)', 'Turn down.']);
    voice.say('Check the probe.', soon);
    voice.say('Turn up.', advice);
    voice.say('Stir.', advice);
    end(2);
    expect(calls.at(-1)).toBe('Stir.');
  });

  it('takes synthesis-failed for no voice, and being cut short for nothing', () => {
    const { voice, failures, fail } = device();
    voice.say('Stir.', advice);
    fail(0, 'interrupted');
    fail(0, 'canceled');
    expect(failures()).toBe(0);
    voice.say('Stir.', advice);
    fail(1, 'synthesis-failed');
    expect(failures()).toBe(1);
  });

  it('is there when voices come late', async () => {
    const late = new EventTarget() as unknown as SpeechSynthesis & { voices: unknown[] };
    late.voices = [];
    late.getVoices = () => late.voices as SpeechSynthesisVoice[];
    const asked = hasVoices(late);
    late.voices = [{}];
    late.dispatchEvent(new Event('voiceschanged'));
    expect(await asked).toBe(true);
  });
});
