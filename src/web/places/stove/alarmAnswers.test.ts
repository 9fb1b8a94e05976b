import { expect, it, vi } from 'vitest';
import type { Acts } from './acts.ts';
import { alarmAnswers } from './alarmAnswers.ts';
import type { View } from './view.ts';

it('asks which of two thermometers that disagree is right, with what each shows, and vouches for that one', () => {
  const apart = {
    probes: [
      { probe: 'couple', valueC: 131.2 },
      { probe: 'pan', valueC: 134.4 },
    ],
    byK: 3.2,
  };
  const say = vi.fn();
  const answers = alarmAnswers({ reading: undefined, apart } as unknown as View, { say } as unknown as Acts, 'F');
  expect(answers.probesApart?.map(({ label, of }) => [label, of])).toEqual([
    ['268 °F is right', 'couple'],
    ['274 °F is right', 'pan'],
  ]);
  answers.probesApart?.[1]?.onAnswer();
  expect(say.mock.calls).toEqual([
    ['seen', { alarm: 'probesApart' }],
    ['vouched', { probe: 'pan' }],
  ]);
});
