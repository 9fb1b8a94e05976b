/** What a plan comes to beside weights and steps: money, energy, time, loss, and what must stand ready when it is done. */
import { useState } from 'react';
import { stoppedC } from '../../../../core/planning/account/coldBath.ts';
import {
  neutraliseBelowC,
  neutralisedPh,
  neutralisingStrength,
} from '../../../../core/planning/account/neutraliser.ts';
import type { Account } from '../../../../core/planning/account.ts';
import type { PlanRequest } from '../../../../core/planning/request.ts';
import { clock, grams, percent } from '../../../parts/figures.ts';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { degrees, type TemperatureUnit } from '../../../parts/temperature.ts';
import { CostRow } from './CostRow.tsx';
import { MineralRow } from './MineralRow.tsx';
import { Row } from './Row.tsx';
import { TrayRow } from './TrayRow.tsx';
import './account.css';

interface AccountViewProps {
  /** Not there at once: the names of the rows are. */
  readonly account: Account | undefined;
  readonly request: PlanRequest;
  readonly bought: number | undefined;
  readonly roomC: number;
  /** Where prices are typed. */
  readonly kitHref: string;
}

/** As usual as any (common practice, no source). */
const usualSlabMm = '6';

export function AccountView({ account, request, bought, roomC, kitHref }: AccountViewProps) {
  const { unit } = useTemperatureUnit();
  const [slabMm, setSlabMm] = useState(usualSlabMm);
  const hard = request.form === 'hard';
  return (
    <section aria-labelledby="comes-to" className="account">
      <h2 id="comes-to">What it comes to</h2>
      <dl className="account-rows">
        <CostRow known={account !== undefined} cost={account?.cost} bought={bought} kitHref={kitHref} />
        <Row name="Energy" figure={account && `${account.energyKWh.toFixed(2)} kWh`}>
          {account && `over ${clock(account.minutes)}, from cold pan to pour`}
        </Row>
        <Row name="Lost" figure={account && `${grams(account.lostKg)} g`}>
          {account && `stays on pan and spoon; ${grams(account.steamKg)} g of water leaves as steam`}
        </Row>
        <MineralRow account={account} request={request} />
        {hard && <TrayRow tray={account?.tray} slabMm={slabMm} onSlab={setSlabMm} />}
        {hard && (
          <Row name="Cold bath" figure={account && `${grams(account.bathKg ?? 0)} g`}>
            {account && bathText(roomC, unit)}
          </Row>
        )}
        {account?.neutraliser && (
          <Row name="To neutralise" figure={`${grams(account.neutraliser.naohKg)} g NaOH`}>
            {neutraliserText(account.neutraliser.caoh2Kg, unit)}
          </Row>
        )}
      </dl>
    </section>
  );
}

const bathText = (roomC: number, unit: TemperatureUnit) =>
  `of water at ${degrees(roomC, unit)} round the pan; it stops the cook at ${degrees(stoppedC, unit).replace(' ', '\u00a0')}`;

const neutraliserText = (caoh2Kg: number, unit: TemperatureUnit) =>
  `or ${grams(caoh2Kg)} g Ca(OH)₂, pure, as a ${percent(neutralisingStrength)} solution in cold water; once the syrup is below ${degrees(neutraliseBelowC, unit)}, until a strip says pH ${neutralisedPh}.`;
