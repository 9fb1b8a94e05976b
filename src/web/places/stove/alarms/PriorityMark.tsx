/** Shape as well as word: a filled triangle for act now, an open one for act soon, an open circle for keep in mind, a tick for none. */
import type { Priority } from '../../../../core/advice/alarms/catalogue.ts';

const triangle = 'M12 3 22 21H2z';
const shapes: Readonly<Record<Priority | 'none', string>> = {
  'act now': triangle,
  'act soon': triangle,
  'keep in mind': 'M12 3a9 9 0 1 1 0 18a9 9 0 1 1 0-18',
  none: 'M4 12l5 6L20 6',
};

export function PriorityMark({ priority }: { readonly priority: Priority | 'none' }) {
  return (
    <svg className="priority-mark" viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
      <path
        d={shapes[priority]}
        fill={priority === 'act now' ? 'currentColor' : 'none'}
        stroke="currentColor"
        strokeWidth="2.5"
        strokeLinejoin="round"
      />
    </svg>
  );
}
