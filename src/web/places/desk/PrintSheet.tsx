/** The kitchen sheet: what is printed of a plan, black on white, for A4 and Letter. Never on screen. */

import { memo } from 'react';
import pkg from '#package.json' with { type: 'json' };
import type { Kit } from '../../../core/pan/kit.ts';
import { layoutFor } from '../../parts/panLine/layout.ts';
import { PanLine } from '../../parts/panLine/PanLine.tsx';
import type { Bands, Picture } from '../../parts/panLine/picture.ts';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { AlkaliCard } from './AlkaliCard.tsx';
import { Amounts } from './Amounts.tsx';
import { Cautions } from './Cautions.tsx';
import { materialNames, stoveNames } from './kitNames.ts';
import { StepTable } from './StepTable.tsx';
import { summaryOf } from './summary.ts';
import './print.css';

interface PrintSheetProps {
  readonly picture: Picture;
  readonly bands: Bands | undefined;
  readonly kit: Kit;
}

const widthPx = 690;

export const PrintSheet = memo(function PrintSheet({ picture, bands, kit }: PrintSheetProps) {
  const { unit } = useTemperatureUnit();
  const { plan, endS, hottestC } = picture;
  const { alkali } = plan.amounts;
  const layout = layoutFor(widthPx, endS, hottestC, alkali ? 3 : 2, true);
  return (
    <div className="print-sheet">
      <h1>{plan.request.name}</h1>
      <p>{summaryOf(picture, bands, unit)}</p>
      <p>
        Kit: {kit.name}. {stoveNames[kit.stove.kind]}, {kit.stove.ratedPowerW} W, dial to {kit.stove.notches};{' '}
        {materialNames[kit.pan.material].toLowerCase()} pan of {(kit.pan.diameterM * 100).toFixed(0)} cm.
      </p>
      <Cautions alkali={alkali !== undefined} />
      <Amounts plan={plan} />
      {alkali && <AlkaliCard alkali={alkali} />}
      <StepTable picture={picture} bands={bands} onPaper />
      <figure className="print-pan">
        <svg width="100%" viewBox={`0 0 ${layout.width} ${layout.height}`} role="img" aria-label="Pan line">
          <PanLine picture={picture} bands={bands} layout={layout} unit={unit} hatched />
        </svg>
        <figcaption>
          Temperature, hatched closer the darker the sugar; dial, spoonfuls and parts of alkali below it. Dashes and
          grey hold 8 in 10 cooks; colour is known to a factor of 2 or 3.
        </figcaption>
      </figure>
      <footer>
        Umberpan {pkg.version}, {new Date().toLocaleDateString(undefined, { dateStyle: 'long' })}. A plan, not a safety
        device: it never watches your stove. Burned: 20 minutes of cool running water; call your local emergency number.
      </footer>
    </div>
  );
});
