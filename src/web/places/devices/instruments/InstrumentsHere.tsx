/** Thermometers of this very device, to be tried before a cook. */
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { ConnectInstrument } from './ConnectInstrument.tsx';

export function InstrumentsHere() {
  const { unit } = useTemperatureUnit();
  return (
    <section aria-labelledby="instruments-here">
      <h2 id="instruments-here">A thermometer at this device</h2>
      <p>Try it here before a cook. In a cook, what it shows goes into the log.</p>
      <ConnectInstrument unit={unit} />
    </section>
  );
}
