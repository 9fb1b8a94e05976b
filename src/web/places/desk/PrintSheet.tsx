/** The kitchen sheet: what is printed of a plan, black on white, for A4 and Letter. Never on screen. */

import { memo } from 'react';
import type { Kit } from '../../../core/pan/kit.ts';
import { layoutFor } from '../../parts/panLine/layout.ts';
import { PanLine } from '../../parts/panLine/PanLine.tsx';
import type { Bands, Picture } from '../../parts/panLine/picture.ts';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { usePrintLine } from '../../parts/usePrintLine.ts';
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
  usePrintLine();
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
      <p>
        <strong>Burned: 20 minutes of cool running water. Call your local emergency number.</strong> Colour is known to
        a factor of 2 or 3 only.
      </p>
      <StepTable picture={picture} bands={bands} onPaper />
      <figure className="print-pan">
        <svg width="100%" viewBox={`0 0 ${layout.width} ${layout.height}`} role="img" aria-label="Pan line">
          <PanLine picture={picture} bands={bands} layout={layout} unit={unit} hatched />
        </svg>
        <figcaption>Hatched closer the darker the sugar. Dashes and grey hold 8 in 10 cooks.</figcaption>
      </figure>
    </div>
  );
});
