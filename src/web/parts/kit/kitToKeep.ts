/** A kit as it is saved: a form changes what was typed, and what was measured and learned of things that stay is none of its business. */
import { keptThrough } from '../../../core/learn/forget.ts';
import type { Kit } from '../../../core/pan/kit.ts';

/** @param saved what is written over; it may have learned more in the meantime */
export function kitToKeep(typed: Kit, saved: Kit | undefined): Kit {
  return saved ? keptThrough(saved, typed) : typed;
}
