/** What was poured, as the twin believes it, and how it will set. */

import type { Poured } from '../../../../core/lot/yield.ts';
import type { Kit } from '../../../../core/pan/kit.ts';
import { stuckShare } from '../../../../core/pan/poured.ts';
import type { Form } from '../../../../core/planning/request.ts';
import { Drop } from '../../../parts/Drop.tsx';
import { ebcOf, grams, percent, span, srmOf } from '../../../parts/figures.ts';
import { likelyHueIndex } from '../../../parts/syrupPaint.ts';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { glassWords, settingWords } from './settingWords.ts';

interface YieldProps {
  readonly poured: Poured;
  readonly form: Form;
  readonly kit: Kit;
}

export function YieldView({ poured, form, kit }: YieldProps) {
  const { unit } = useTemperatureUnit();
  const { massKg, waterShare, inverted, a430, setting } = poured;
  const tenths = (share: number) => percent(share, 1);
  const tone = { a430: a430.mid, hueIndex: likelyHueIndex(a430.mid), waterShare: waterShare.mid };
  return (
    <section className="set-yield" aria-labelledby="set-yield">
      <h3 id="set-yield">What to expect</h3>
      <dl>
        <Figure name="Sugar" value={`${grams(massKg.mid)} g`} range={`${span(massKg, grams)} g`} />
        <Figure name="Water" value={tenths(waterShare.mid)} range={span(waterShare, tenths)} />
        <Figure name="Inverted" value={percent(inverted.mid)} range={span(inverted, (share) => percent(share))} />
        <div>
          <dt>Colour, 10 % solution</dt>
          <dd className="set-colour">
            <Drop tone={tone} size={40} />
            <span className="figure">{ebcOf(a430.mid)} EBC</span>
          </dd>
          <dd className="small quiet">
            {span(a430, ebcOf)} EBC, {span(a430, srmOf)} SRM
          </dd>
        </div>
      </dl>
      {form === 'hard' && (
        <>
          <p>
            <strong>{settingWords(setting)}</strong>
          </p>
          <p className="small quiet">{glassWords(setting, kit.roomC, unit)}</p>
        </>
      )}
      <p className="small quiet">
        Between the two figures lie 8 in 10 of the twin’s pans. {percent(stuckShare.least, 1)} to{' '}
        {percent(stuckShare.most, 1)} is taken to stay on pan and spoon (assumed).
      </p>
    </section>
  );
}

function Figure({ name, value, range }: { readonly name: string; readonly value: string; readonly range: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd className="figure">{value}</dd>
      <dd className="small quiet">{range}</dd>
    </div>
  );
}
