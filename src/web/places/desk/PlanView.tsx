/** The plan on screen: where it lands, the pan line, and what to weigh, prepare and do. */
import { memo } from 'react';
import type { Kit } from '../../../core/pan/kit.ts';
import { isNeutralised } from '../../../core/planning/account/neutraliser.ts';
import type { Account } from '../../../core/planning/account.ts';
import type { PlanRequest } from '../../../core/planning/request.ts';
import { PanLineFigure } from '../../parts/panLine/PanLineFigure.tsx';
import { PanTable } from '../../parts/panLine/PanTable.tsx';
import type { Bands, Picture } from '../../parts/panLine/picture.ts';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { AlkaliCard } from './AlkaliCard.tsx';
import { Amounts } from './Amounts.tsx';
import { AccountView } from './account/AccountView.tsx';
import { WaterView } from './account/WaterView.tsx';
import { Laid } from './behind/Laid.tsx';
import { LayLegend } from './behind/LayLegend.tsx';
import type { Laying } from './behind/useBehind.ts';
import { Cautions } from './Cautions.tsx';
import { StepHandles } from './hand/StepHandles.tsx';
import { Landing } from './Landing.tsx';
import { NeutraliserCard } from './NeutraliserCard.tsx';
import { PanFitView } from './PanFitView.tsx';
import { StepTable } from './StepTable.tsx';
import { summaryOf } from './summary.ts';

interface PlanViewProps {
  readonly picture: Picture;
  readonly bands: Bands | undefined;
  readonly account: Account | undefined;
  readonly kit: Kit;
  readonly kitId: string | undefined;
  readonly laying: Laying;
  /** A field can't be read just now, and this is the last plan that could be made. */
  readonly stale: boolean;
  /** What is being changed by hand. */
  readonly request: PlanRequest;
  readonly onChange: (change: Partial<PlanRequest>) => void;
}

export const PlanView = memo(function PlanView(props: PlanViewProps) {
  const { picture, bands, account, kit, kitId, laying, stale, request, onChange } = props;
  const { unit } = useTemperatureUnit();
  const { plan, tones, ends } = picture;
  const { behind } = laying;
  const { alkali } = plan.amounts;
  const neutralised = isNeutralised(plan.request);
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
          behind={behind?.outcome?.kind === 'plan' ? behind.outcome.picture : undefined}
          legend={<LayLegend laying={laying} here={plan.request.name} />}
          summary={summaryOf(picture, bands, unit)}
          hand={(layout) => <StepHandles picture={picture} request={request} layout={layout} onChange={onChange} />}
        />
        {behind && <Laid behind={behind} here={picture} />}
        <PanTable picture={picture} bands={bands} />
      </div>
      <div className="results" data-stale={dimmed}>
        <div className="results-grid">
          <Amounts plan={plan} />
          <PanFitView plan={plan} pours={bands?.forecast.yieldKg} kit={kit} tone={tones.at(-1)} />
          {alkali && <AlkaliCard alkali={alkali} cautions={plan.cautions} />}
          {neutralised && <NeutraliserCard substance={plan.request.alkali} neutraliser={account?.neutraliser} />}
          <StepTable picture={picture} bands={bands} />
          <AccountView
            account={account}
            request={plan.request}
            bought={kit.prices?.bought}
            roomC={kit.roomC}
            kitHref={kitId ? `/kit/${kitId}` : '/kit'}
          />
          <WaterView
            account={account}
            water={kit.water}
            request={plan.request}
            inverted={ends.at(-1)?.inverted ?? 0}
            band={bands?.forecast.steps.at(-1)?.inverted}
          />
          <Cautions plan={plan} />
        </div>
      </div>
    </>
  );
});
