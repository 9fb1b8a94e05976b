/** How the batch fits the pan: drawn to scale from the side, and in words. */
import type { Kit } from '../../../core/pan/kit.ts';
import type { PanFit } from '../../../core/planning/panFit.ts';
import type { Plan } from '../../../core/planning/plan.ts';
import type { Range } from '../../../core/twin/range.ts';
import { grams, span } from '../../parts/figures.ts';
import { poolColour, type Tone } from '../../parts/syrupPaint.ts';

interface PanFitProps {
  readonly plan: Plan;
  /** Where 8 in 10 pours should be, kg; not known at once. */
  readonly pours: Range | undefined;
  readonly kit: Kit;
  readonly tone: Tone | undefined;
}

const mm = (m: number): string => (m * 1000).toFixed(0);

export function PanFitView({ plan, pours, kit, tone }: PanFitProps) {
  const { fit, yieldKg, mostFinishedKg } = plan;
  return (
    <section aria-labelledby="fit" className="fit">
      <h2 id="fit">In the pan</h2>
      <PanSide fit={fit} kit={kit} tone={tone} />
      <ul>
        <li>
          Syrup <strong>{mm(fit.depthM)} mm</strong> deep, foam up to <strong>{mm(fit.foamM)} mm</strong> of{' '}
          {mm(kit.pan.heightM)} mm: {fit.foamStaysIn ? 'it stays in.' : 'it may boil over; take a taller pan.'}
        </li>
        <li>
          {fit.probeCovered
            ? 'The thermometer’s tip is covered.'
            : 'Too shallow for a thermometer’s tip to stay covered: tilt the pan to read, or take a narrower one.'}
        </li>
        <li>
          Pours <strong>{grams(yieldKg)} g</strong>
          {pours && ` (8 in 10: ${span(pours, grams)} g)`}. The most this pan takes is{' '}
          <strong>{grams(mostFinishedKg)} g</strong> finished, from {grams(fit.mostSugarKg)} g of sugar weighed in.
        </li>
      </ul>
    </section>
  );
}

/** The pan from the side, one scale for width and height. */
function PanSide({ fit, kit, tone }: Pick<PanFitProps, 'kit' | 'tone'> & { readonly fit: PanFit }) {
  const scale = 190 / Math.max(kit.pan.diameterM, kit.pan.heightM * 1.6);
  const width = kit.pan.diameterM * scale;
  const height = kit.pan.heightM * scale;
  const [left, floor] = [6, height + 8];
  const depth = fit.depthM * scale;
  const foam = Math.min(fit.foamM * scale, height + 6);
  return (
    <svg width={width + 74} height={height + 16} viewBox={`0 0 ${width + 74} ${height + 16}`} aria-hidden="true">
      {tone && <rect x={left} y={floor - depth} width={width} height={depth} fill={poolColour(tone, 0.3)} />}
      <line
        x1={left}
        x2={left + width}
        y1={floor - foam}
        y2={floor - foam}
        stroke="currentColor"
        strokeDasharray="2 4"
        strokeWidth="1.5"
      />
      <path
        d={`M${left} 8V${floor}h${width}V8M${left + width} 18l62-8`}
        fill="none"
        stroke="currentColor"
        strokeWidth="2.5"
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </svg>
  );
}
