/** The field for what is on the Desk, as far as it is cooked. A change of the slider keeps the old picture until its lines are there anew. */
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { Kit } from '../../../../core/pan/kit.ts';
import type { ColourBand } from '../../../../core/planning/field/band.ts';
import { type FieldLine, type FieldSpec, fieldLines } from '../../../../core/planning/field.ts';
import type { PlanRequest } from '../../../../core/planning/request.ts';
import { cookField } from './cooking.ts';
import { type Levers, leversFor, sliderOf, specFor } from './fieldSpec.ts';

export interface Cooked {
  readonly spec: FieldSpec;
  readonly lines: readonly FieldLine[];
  /** Nothing until its draws are cooked. */
  readonly band: ColourBand | undefined;
  readonly failed: string | undefined;
  /** Lines of this very field. */
  readonly done: number;
}

/** So long a change must rest before anything is cooked, ms: a finger on a slider is faster than the pan. */
const restMs = 40;

/** @param seen nothing is cooked that nobody could see */
export function useField(request: PlanRequest, kit: Kit, chosen: Levers | undefined, seen: boolean) {
  const levers = leversFor(request, chosen);
  const slid = sliderOf(request.route, levers);
  // Both are made anew with every key that is typed: what they say is what counts.
  const specKey = JSON.stringify(specFor(request, levers));
  const kitKey = JSON.stringify({ ...kit, name: '' });
  const spec = useMemo(() => JSON.parse(specKey) as FieldSpec, [specKey]);
  const [cooked, setCooked] = useState<Cooked>({ spec, lines: [], band: undefined, failed: undefined, done: 0 });

  const askedAt = useRef<number>(undefined);
  const asked = useRef(false);

  useEffect(() => {
    if (!seen) return;
    let frame = 0;
    let leave = () => {};
    let fresh: FieldLine[] = [];
    const began = performance.now();
    const askedBefore = asked.current;
    asked.current = true;
    askedAt.current = began;
    let count = 0;
    const all = fieldLines(spec).length;
    setCooked((now) => (sameAxes(now.spec, spec) ? { ...now, spec, done: 0, failed: undefined } : empty(spec)));
    const show = () => {
      frame = 0;
      const came = fresh;
      fresh = [];
      count += came.length;
      if (count === all) performance.measure('all of the field', { start: began });
      setCooked((now) => ({ ...now, lines: withLines(now.lines, came), done: now.done + came.length }));
    };
    const timer = setTimeout(
      () => {
        leave = cookField(
          { spec, kit: JSON.parse(kitKey) as Kit, slid },
          {
            line(line) {
              fresh.push(line);
              if (count === 0) show();
              else frame ||= requestAnimationFrame(show);
            },
            band(band) {
              performance.measure('field with its band', { start: began });
              setCooked((now) => ({ ...now, band }));
            },
            failed: (failed) => setCooked((now) => ({ ...now, failed })),
          },
        );
      },
      askedBefore ? restMs : 0,
    );
    return () => {
      clearTimeout(timer);
      cancelAnimationFrame(frame);
      leave();
    };
  }, [spec, kitKey, slid, seen]);

  // The canvas below is painted by the time that this runs.
  useLayoutEffect(() => {
    if (cooked.done === 0 || askedAt.current === undefined) return;
    performance.measure('first paint of the field', { start: askedAt.current });
    askedAt.current = undefined;
  }, [cooked.done]);

  return {
    levers,
    slid,
    cooked: cooked.spec === spec ? cooked : { ...cooked, spec, lines: sameAxes(cooked.spec, spec) ? cooked.lines : [] },
  };
}

const empty = (spec: FieldSpec): Cooked => ({ spec, lines: [], band: undefined, failed: undefined, done: 0 });

function sameAxes(a: FieldSpec, b: FieldSpec): boolean {
  return JSON.stringify([a.x, a.y]) === JSON.stringify([b.x, b.y]);
}

/** New lines in place of old ones. */
function withLines(lines: readonly FieldLine[], came: readonly FieldLine[]): readonly FieldLine[] {
  const at = new Set(came.map((line) => line.at));
  return [...lines.filter((line) => !at.has(line.at)), ...came];
}
