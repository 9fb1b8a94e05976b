/** Where the cook should land: the sugar's colour as three drops, with mass and time. */
import type { Range } from '../../../core/twin/range.ts';
import { Drop } from '../../parts/Drop.tsx';
import { clock, ebcOf, grams, span, srmOf } from '../../parts/figures.ts';
import type { Bands, Picture } from '../../parts/panLine/picture.ts';
import { likelyHueIndex, type Tone } from '../../parts/syrupPaint.ts';

interface LandingProps {
  readonly picture: Picture;
  readonly bands: Bands | undefined;
}

/** The range of A430 at the end, and the middle alone before the draws are there. */
function endColour({ picture, bands }: LandingProps): Range {
  const mid = picture.ends.at(-1)?.a430 ?? 0;
  const { low, high } = bands?.forecast.steps.at(-1)?.a430 ?? { low: mid, high: mid };
  return { low, mid, high };
}

export function Landing(props: LandingProps) {
  const { picture, bands } = props;
  const range = endColour(props);
  const last = picture.tones.at(-1);
  const known = bands !== undefined;
  const tone = (a430: number): Tone => ({
    a430,
    hueIndex: likelyHueIndex(a430),
    waterShare: last?.waterShare ?? 0.03,
  });
  const minutes = bands?.forecast.steps.at(-1)?.endMinute;
  return (
    <dl className="landing">
      <div className="colour">
        <dt>Colour, 10 % solution</dt>
        <dd className="drops">
          {(['low', 'mid', 'high'] as const).map((mark) => (
            <span key={mark} className={mark}>
              <Drop tone={tone(range[mark])} size={mark === 'mid' ? 64 : 48} />
            </span>
          ))}
        </dd>
        <dd>
          <span className="figure">{ebcOf(range.mid)} EBC</span>
          <span className="range">{known ? `between ${ebcOf(range.low)} and ${ebcOf(range.high)}` : ' '}</span>
          <span className="range">{known ? `${srmOf(range.low)} to ${srmOf(range.high)} SRM` : ' '}</span>
        </dd>
      </div>
      <div className="further">
        <dt>Finished sugar</dt>
        <dd>
          <span className="figure">{grams(picture.plan.yieldKg)} g</span>
          <span className="range">{bands ? `${span(bands.forecast.yieldKg, grams)} g` : ' '}</span>
        </dd>
      </div>
      <div className="further">
        <dt>From cold pan to pour</dt>
        <dd>
          <span className="figure">{clock(picture.endS / 60)}</span>
          <span className="range">{minutes ? `${span(minutes, (value) => value.toFixed(0))} min` : ' '}</span>
        </dd>
      </div>
    </dl>
  );
}
