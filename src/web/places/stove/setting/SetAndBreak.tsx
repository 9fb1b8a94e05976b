/** Set and break: after the pour, when it can be touched, frozen and broken, what to expect, and the lot that comes of it. */
import { useDeferredValue, useMemo, useState } from 'react';
import { Link } from 'wouter';
import { type AlkaliGiven, type Lot, lotOf, type Origin } from '../../../../core/lot/lot.ts';
import type { Poured } from '../../../../core/lot/yield.ts';
import type { Kit } from '../../../../core/pan/kit.ts';
import type { Plan } from '../../../../core/planning/plan.ts';
import { newId } from '../../../records/newId.ts';
import { Cautions } from './Cautions.tsx';
import { Countdown } from './Countdown.tsx';
import { castOnly, whenBreaking, whileItSets } from './cautions.ts';
import { forecastOf } from './forecast.ts';
import { type LotAnswers, LotEntry } from './LotEntry.tsx';
import { LotMade } from './LotMade.tsx';
import { TrayEntry } from './TrayEntry.tsx';
import { rememberedTray, rememberTray } from './tray.ts';
import { addLot } from './waitingLots.ts';
import { YieldView } from './YieldView.tsx';
import './setting.css';

export interface SetAndBreakProps {
  /** From `pouredOf`, over the twin's members at the moment of the pour. */
  readonly poured: Poured;
  /** When it was poured, ms since 1970. */
  readonly pouredMs: number;
  readonly plan: Pick<Plan, 'request'>;
  readonly kit: Kit;
  /** The kept plan and cook; null for those that are not kept. */
  readonly planId: string | null;
  readonly cookId: string | null;
  readonly origin: Origin;
  /** What browned it, as logged. */
  readonly alkali: AlkaliGiven | null;
  /** The lot of this cook was made before. */
  readonly made: boolean;
  /** Once it is written down on this device; it may reach the server later. */
  readonly onLotMade: (lot: Lot & { readonly id: string }) => void;
}

export function SetAndBreak(props: SetAndBreakProps) {
  const { poured, pouredMs, plan, kit, planId, cookId, origin, alkali, onLotMade } = props;
  const { form, name: plannedName } = plan.request;
  const [tray, setTray] = useState(rememberedTray);
  const [made, setMade] = useState<{ readonly id: string; readonly name: string }>();
  const onTray = useDeferredValue(tray);
  const forecast = useMemo(() => forecastOf({ poured, form, kit, tray: onTray }), [poured, form, kit, onTray]);
  const hard = form === 'hard';

  function make({ name, weighedKg }: LotAnswers) {
    const madeAt = new Date(pouredMs).toISOString();
    const made = lotOf({ id: newId(), name, origin, cookId, planId, madeAt, form, weighedKg, alkali, poured });
    const { id, ...lot } = made;
    void addLot(id, lot);
    setMade({ id, name });
    onLotMade(made);
  }

  return (
    <div className="setting">
      <h2>{hard ? 'Set and break' : 'Let it cool'}</h2>
      <Cautions title="While it is hot" cautions={hard ? [...whileItSets, ...castOnly] : whileItSets}>
        <Link className="button" href="/care">
          First aid
        </Link>
      </Cautions>
      <Countdown forecast={forecast} pouredMs={pouredMs} />
      {hard && (
        <TrayEntry
          tray={tray}
          thicknessM={forecast.kind === 'forecast' ? forecast.thicknessM : undefined}
          onTray={(changed) => {
            setTray(changed);
            rememberTray(changed);
          }}
        />
      )}
      <YieldView poured={poured} form={form} kit={kit} />
      {hard && <Cautions title="Before you break it" cautions={whenBreaking} />}
      {made ? (
        <LotMade {...made} />
      ) : props.made ? (
        <p role="status">The lot of this cook was made.</p>
      ) : (
        <LotEntry plannedName={plannedName} expectedKg={poured.massKg} onMake={make} />
      )}
    </div>
  );
}
