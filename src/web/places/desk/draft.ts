/** What is on the Desk: the aim and the kit as entered, and what of it is saved. Survives a reload. */

import type { KitRecord } from '../../../api/kit.ts';
import { kitSchema } from '../../../api/kit.ts';
import { type PlanRecord, planRecordSchema } from '../../../api/plan.ts';
import { planRequestSchema } from '../../../api/planRequest.ts';
import { z } from '../../../api/zod.ts';
import { defaultKit, type Kit } from '../../../core/pan/kit.ts';
import { defaultRequest, type PlanRequest } from '../../../core/planning/request.ts';
import { keep, kept } from '../../parts/browserStorage.ts';
import type { Sheet } from '../../parts/entry.ts';

/** The saved kit that this one was made from. */
interface KitBase {
  readonly id: string;
  readonly version: number;
  readonly kit: Kit;
}

export interface Draft {
  readonly aim: Sheet<PlanRequest>;
  readonly kit: Sheet<Kit>;
  readonly base: KitBase | null;
  /** The saved plan that the aim was opened from or saved as. */
  readonly plan: PlanRecord | null;
}

export const freshDraft: Draft = {
  aim: { good: defaultRequest, texts: {} },
  kit: { good: defaultKit, texts: {} },
  base: null,
  plan: null,
};

const key = 'umberpan.desk';
const texts = z.record(z.string(), z.string()).catch({});
const draftSchema = z.object({
  aim: z.object({ good: planRequestSchema, texts }),
  kit: z.object({ good: kitSchema, texts }),
  base: z.object({ id: z.string(), version: z.number(), kit: kitSchema }).nullable().catch(null),
  plan: planRecordSchema.nullable().catch(null),
});

/** A draft out of storage; undefined when it can't be read. */
export function readDraft(stored: unknown): Draft | undefined {
  const read = draftSchema.safeParse(stored);
  return read.success ? read.data : undefined;
}

/**
 * What was on the Desk when this browser last had it open; undefined when there is nothing, or nothing that can be read. Its plan is
 * the saved one that it then was, unchanged: a cook that begins with it is named by it.
 */
export function keptDraft(): Draft | undefined {
  try {
    return readDraft(JSON.parse(kept(key) ?? 'null'));
  } catch {
    return undefined;
  }
}

export function keepDraft(draft: Draft): void {
  const { aim, kit, base, plan } = draft;
  keep(key, JSON.stringify({ aim, kit, base, plan: isSaved(draft) ? plan : null }));
}

export function withKit(draft: Draft, { id, version, kit }: KitRecord): Draft {
  return { ...draft, kit: { good: kit, texts: {} }, base: { id, version, kit } };
}

export function withPlan(draft: Draft, plan: PlanRecord, kits: readonly KitRecord[]): Draft {
  const opened: Draft = { ...draft, aim: { good: plan.request, texts: {} }, plan };
  const record = kits.find(({ id }) => id === plan.kitId);
  return record && record.id !== draft.base?.id ? withKit(opened, record) : opened;
}

export function kitIsChanged({ kit, base }: Draft): boolean {
  return JSON.stringify(kit.good) !== JSON.stringify(base?.kit ?? defaultKit);
}

/** Is what is on the Desk just what was saved? */
export function isSaved({ aim, base, plan }: Draft): boolean {
  return plan !== null && plan.kitId === (base?.id ?? null) && sameRequest(plan.request, aim.good);
}

/**
 * Does the Desk still hold the plan that it was opened from, so that its address is right? A plan whose kit is not kept, or not
 * known, goes with any kit.
 */
export function holdsPlan({ aim, base, plan }: Draft, kits: readonly KitRecord[]): boolean {
  if (!plan || !sameRequest(plan.request, aim.good)) return false;
  return plan.kitId === base?.id || !kits.some(({ id }) => id === plan.kitId);
}

function sameRequest(a: PlanRequest, b: PlanRequest): boolean {
  const fields = Object.keys({ ...a, ...b }) as (keyof PlanRequest)[];
  return fields.every((field) => JSON.stringify(a[field]) === JSON.stringify(b[field]));
}
