/** Lines of equal taste over the field, named along themselves as on a map, and the line of the colour wished for. */
import { memo, useDeferredValue, useMemo } from 'react';
import type { Layout } from '../../../../core/planning/field/drawn/layout.ts';
import type { Planes } from '../../../../core/planning/field/drawn/planes.ts';
import { type Named, tasteLines, wishLines } from '../../../../core/planning/field/drawn/tasteLines.ts';
import type { TasteName } from '../../../../core/planning/taste.ts';
import type { Wished } from './FieldPlace.tsx';

interface FieldLinesProps {
  readonly planes: Planes | undefined;
  readonly shown: readonly TasteName[];
  readonly wished: Wished | undefined;
  readonly layout: Layout;
}

export const FieldLines = memo(function FieldLines({ planes, shown, wished, layout }: FieldLinesProps) {
  // The paint comes first; lines follow when there is a moment.
  const settled = useDeferredValue(planes);
  const tastes = useMemo(() => (settled ? tasteLines(settled, shown, layout) : []), [settled, shown, layout]);
  const wish = useMemo(
    () => (settled && wished ? wishLines(settled, wished.a430, wished.name, layout) : []),
    [settled, wished, layout],
  );
  return (
    <g className="field-lines">
      {tastes.map((line) => (
        <NamedLine key={line.key} line={line} />
      ))}
      <g className="wish-line">
        {wish.map((line) => (
          <NamedLine key={line.key} line={line} />
        ))}
      </g>
    </g>
  );
});

function NamedLine({ line: { path, dash, name, label } }: { readonly line: Named }) {
  return (
    <>
      <path className="under" d={path} />
      <path className="over" d={path} strokeDasharray={dash} />
      {label && (
        <text x={label.x} y={label.y} dy="0.32em" transform={`rotate(${label.turn} ${label.x} ${label.y})`}>
          {name}
        </text>
      )}
    </>
  );
}
