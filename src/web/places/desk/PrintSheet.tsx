/** The kitchen sheet: what is printed of a plan, black on white, for A4 and Letter. Never on screen. */

import { memo } from 'react';
import { hatchingWords } from '../../../core/colour/hatching.ts';
import type { Kit } from '../../../core/pan/kit.ts';
import { isNeutralised } from '../../../core/planning/account/neutraliser.ts';
import type { Account } from '../../../core/planning/account.ts';
import { formatSpoon } from '../../../core/units/formatSpoon.ts';
import { clock, grams } from '../../parts/figures.ts';
import { materialNames, stoveNames } from '../../parts/kit/kitNames.ts';
import { flatLayoutFor } from '../../parts/panLine/layout.ts';
import { PanLine } from '../../parts/panLine/PanLine.tsx';
import type { Bands, Picture } from '../../parts/panLine/picture.ts';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { usePrintLine } from '../../parts/usePrintLine.ts';
import { AlkaliCard } from './AlkaliCard.tsx';
import { Amounts } from './Amounts.tsx';
import { readyText } from './account/accountWords.ts';
import { Cautions } from './Cautions.tsx';
import { NeutraliserCard } from './NeutraliserCard.tsx';
import { StepTable } from './StepTable.tsx';
import { landingOf } from './summary.ts';
import './print.css';

interface PrintSheetProps {
  readonly picture: Picture;
  readonly bands: Bands | undefined;
  readonly account: Account | undefined;
  readonly kit: Kit;
}

const widthPx = 690;

export const PrintSheet = memo(function PrintSheet({ picture, bands, account, kit }: PrintSheetProps) {
  const { unit } = useTemperatureUnit();
  const { plan, endS, hottestC } = picture;
  const { alkali } = plan.amounts;
  const { name, form, route } = plan.request;
  const neutralised = isNeutralised(plan.request);
  usePrintLine();
  const layout = flatLayoutFor(widthPx, endS, hottestC, alkali ? 3 : 2, plan.steps.length);
  return (
    <div className="print-sheet">
      <h1>
        {name} <span className="total">{clock(endS / 60)}</span>
      </h1>
      <p>
        {grams(plan.yieldKg)} g, {form}, {route} route{bands && `; ${landingOf(bands)}`}. Kit: {kit.name}.{' '}
        {stoveNames[kit.stove.kind]}, {kit.stove.ratedPowerW} W, dial to {kit.stove.notches};{' '}
        {materialNames[kit.pan.material].toLowerCase()} pan of {(kit.pan.diameterM * 100).toFixed(0)} cm; spoon of{' '}
        {formatSpoon(kit.spoonM3)}.{account && ` ${readyText(account)}`}
      </p>
      <Cautions plan={plan} />
      <div className="prepare">
        <Amounts plan={plan} />
        {alkali && <AlkaliCard alkali={alkali} cautions={plan.cautions} />}
        {neutralised && <NeutraliserCard substance={plan.request.alkali} neutraliser={account?.neutraliser} />}
      </div>
      <StepTable picture={picture} bands={bands} onPaper />
      <figure className="print-pan">
        <svg width="100%" viewBox={`0 0 ${layout.width} ${layout.height}`} role="img" aria-label="Pan line">
          <PanLine picture={picture} bands={bands} layout={layout} unit={unit} hatched />
        </svg>
        <figcaption>
          {hatchingWords} Dashes and grey hold 8 in 10 cooks; colour is known to a factor of 2 or 3 only.
          <strong className="burned">
            Burned: 20 minutes of cool running water. Call your local emergency number.
          </strong>
        </figcaption>
      </figure>
    </div>
  );
});
