import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { PlanRecord } from '../../../api/plan.ts';
import { type Draft, freshDraft, keepDraft, keptDraft } from './draft.ts';

beforeEach(() => {
  const store = new Map<string, string>();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => store.get(key) ?? null,
    setItem: (key: string, value: string) => store.set(key, value),
  });
});
afterEach(() => vi.unstubAllGlobals());

const plan: PlanRecord = {
  id: '0b6e4c1a-8d0f-4b36-9b57-2f1c8f6f2a11',
  created: '2026-11-29T10:00:00.000Z',
  kitId: null,
  request: freshDraft.aim.good,
};
const saved: Draft = { ...freshDraft, plan };

it('remembers which saved plan lies on the Desk, so that a cook that begins with it is named by it', () => {
  keepDraft(saved);
  expect(keptDraft()?.plan).toEqual(plan);
});

it('forgets the saved plan once the aim or the kit is another one: such a cook goes by no saved plan', () => {
  const others: readonly Draft[] = [
    { ...saved, aim: { good: { ...plan.request, alkaliGPerKg: 4 }, texts: {} } },
    { ...saved, aim: { good: { ...plan.request, moreHolds: [{ celsius: 157, minutes: 3 }] }, texts: {} } },
    { ...saved, base: { id: '6d1a', version: 1, kit: saved.kit.good } },
  ];
  for (const other of others) {
    keepDraft(other);
    expect(keptDraft()).toEqual({ ...other, plan: null });
  }
});

it('holds that were saved with a plan are the same when they come back from storage', () => {
  const request = { ...plan.request, moreHolds: [{ celsius: 157, minutes: 3 }] };
  const held: Draft = { ...saved, aim: { good: request, texts: {} }, plan: { ...plan, request } };
  keepDraft(held);
  expect(keptDraft()).toEqual(held);
});
