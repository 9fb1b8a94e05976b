/** What can be forgotten, for the help: named here again so that showing it loads no physics; checked by the compiler. */
import type { Thing } from '../../core/learn/forget.ts';

export const things = ['stove', 'pan', 'thermometer', 'spoon', 'sugar'] as const satisfies readonly Thing[];
