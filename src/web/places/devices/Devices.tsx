/** Devices: how this one stands, who else is let in, and the thermometers that the server listens to. */

import { TemperatureUnitProvider } from '../../parts/TemperatureUnit.tsx';
import { useTitle } from '../../parts/useTitle.ts';
import { useKeeps, useStanding } from '../../records/useStanding.ts';
import { DeviceList } from './DeviceList.tsx';
import { Invite } from './Invite.tsx';
import { Inputs } from './inputs/Inputs.tsx';
import { InstrumentsHere } from './instruments/InstrumentsHere.tsx';
import { Pairing } from './Pairing.tsx';
import { ThisDevice } from './ThisDevice.tsx';
import './devices.css';

export default function Devices() {
  useTitle('Devices');
  const standing = useStanding();
  const keeps = useKeeps();
  return (
    <TemperatureUnitProvider>
      <main id="main" className="devices">
        <h1>Devices</h1>
        <div className="devices-columns">
          <div>
            <ThisDevice standing={standing} />
            {standing?.standing === 'unpaired' && (
              <section aria-labelledby="pairing">
                <h2 id="pairing">Pair this device</h2>
                <Pairing />
              </section>
            )}
            {keeps && <Invite />}
            {keeps && <DeviceList />}
          </div>
          <div>
            {(keeps || standing?.device?.role === 'cook') && <Inputs keeps={keeps} />}
            <InstrumentsHere />
          </div>
        </div>
      </main>
    </TemperatureUnitProvider>
  );
}
