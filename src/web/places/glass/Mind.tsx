/** What to mind about the beer, and by which formulas its numbers are made. */
import { formulas } from '../../../core/beer/formulas.ts';
import type { Given } from '../../../core/beer/given.ts';
import type { Glass } from '../../../core/beer/glass.ts';
import { glassCautions } from '../../../core/beer/glassCautions.ts';
import { CautionList } from './CautionList.tsx';

const formulaNames = {
  gravity: 'Plato and gravity',
  inversion: 'Gained by inversion',
  extracts: 'Real extract',
  alcohol: 'Alcohol',
  alcoholBeside: 'Alcohol, beside it',
  attenuation: 'Attenuation',
  colour: 'Colour',
  colourBeside: 'Colour, beside it',
  energy: 'Energy',
} as const satisfies Partial<Record<keyof typeof formulas, string>>;

export function Mind({ glass, given }: { readonly glass: Glass; readonly given: Given }) {
  return (
    <section className="mind" aria-labelledby="glass-mind">
      <h2 id="glass-mind">Mind</h2>
      <CautionList cautions={glassCautions(glass, given)} />
      <details className="formulas">
        <summary>By which formulas</summary>
        <dl>
          {(Object.keys(formulaNames) as (keyof typeof formulaNames)[]).map((name) => (
            <div key={name}>
              <dt>{formulaNames[name]}</dt>
              <dd>{formulas[name]}</dd>
            </div>
          ))}
        </dl>
      </details>
    </section>
  );
}
