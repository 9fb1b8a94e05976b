/** The plan on screen: where it lands, the pan line, and what to weigh, prepare and do. */
import { memo } from 'react';
import type { Kit } from '../../../core/pan/kit.ts';
import type { PlanRequest } from '../../../core/planning/request.ts';
import { PanLineFigure } from '../../parts/panLine/PanLineFigure.tsx';
import { PanTable } from '../../parts/panLine/PanTable.tsx';
import type { Bands, Picture } from '../../parts/panLine/picture.ts';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { AlkaliCard } from './AlkaliCard.tsx';
import { Amounts } from './Amounts.tsx';
import { Cautions } from './Cautions.tsx';
import { StepHandles } from './hand/StepHandles.tsx';
import { Landing } from './Landing.tsx';
import { PanFitView } from './PanFitView.tsx';
import { StepTable } from './StepTable.tsx';
import { summaryOf } from './summary.ts';

interface PlanViewProps {
  readonly picture: Picture;
  readonly bands: Bands | undefined;
  readonly kit: Kit;
  /** A field can't be read just now, and this is the last plan that could be made. */
  readonly stale: boolean;
  /** What is being changed by hand. */
  readonly request: PlanRequest;
  readonly onChange: (change: Partial<PlanRequest>) => void;
}

export const PlanView = memo(function PlanView({ picture, bands, kit, stale, request, onChange }: PlanViewProps) {
  const { unit } = useTemperatureUnit();
  const { plan, tones } = picture;
  const { alkali } = plan.amounts;
  const dimmed = stale ? '' : undefined;
  return (
    <>
      <div className="picture" data-stale={dimmed}>
        <p className="stale-note" role="status">
          {stale && 'This is the last plan that could be made: one field can’t be read.'}
        </p>
        <Landing picture={picture} bands={bands} />
        <PanLineFigure
          picture={picture}
          bands={bands}
          summary={summaryOf(picture, bands, unit)}
          hand={(layout) => <StepHandles picture={picture} request={request} layout={layout} onChange={onChange} />}
        />
        <PanTable picture={picture} bands={bands} />
      </div>
      <div className="results" data-stale={dimmed}>
        <div className="results-grid">
          <Amounts plan={plan} />
          <PanFitView plan={plan} pours={bands?.forecast.yieldKg} kit={kit} tone={tones.at(-1)} />
          {alkali && <AlkaliCard alkali={alkali} cautions={plan.cautions} />}
          <StepTable picture={picture} bands={bands} />
          <Cautions alkali={alkali !== undefined} />
        </div>
      </div>
    </>
  );
});
