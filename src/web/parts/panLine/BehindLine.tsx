/** Another plan's course, laid behind the one that is drawn: long dashes, and an open ring where each of its steps ends. */
import type { Layout } from './layout.ts';
import { linePath } from './paths.ts';
import { drawnEveryS, type Picture } from './picture.ts';

interface BehindLineProps {
  readonly behind: Picture;
  readonly layout: Layout;
}

export function BehindLine({ behind, layout }: BehindLineProps) {
  const { x, y } = layout;
  const course = linePath(behind.traces.readingC, drawnEveryS, x, y);
  return (
    <g>
      <path className="course-halo" d={course} />
      <path className="course behind-course" d={course} />
      {behind.ends.map(({ endMinute, readingC }) => (
        <circle key={endMinute} className="behind-ring" cx={x(60 * endMinute)} cy={y(readingC)} r="3.5" />
      ))}
    </g>
  );
}

/** A piece of either line, for a legend. */
export function LineSample({ kind }: { readonly kind: 'main' | 'behind' }) {
  return (
    <svg className="pan-line" width="44" height="12" aria-hidden="true">
      <path className={`course ${kind}-course`} d="M1 6h42" />
      {kind === 'behind' && <circle className="behind-ring" cx="38" cy="6" r="3.5" />}
    </svg>
  );
}
