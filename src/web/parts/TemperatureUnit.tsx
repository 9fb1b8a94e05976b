/** Celsius or Fahrenheit, for everything that is shown and for numbers typed without a unit. */
import { createContext, type ReactNode, useContext, useState } from 'react';
import { keep, kept } from './browserStorage.ts';
import type { TemperatureUnit } from './temperature.ts';

const key = 'umberpan.temperature';
const Chosen = createContext<{ unit: TemperatureUnit; choose(unit: TemperatureUnit): void }>({
  unit: 'C',
  choose: () => {},
});

export function TemperatureUnitProvider({ children }: { children: ReactNode }) {
  const [unit, setUnit] = useState<TemperatureUnit>(() => (kept(key) === 'F' ? 'F' : 'C'));
  const choose = (chosen: TemperatureUnit) => {
    keep(key, chosen);
    setUnit(chosen);
  };
  return <Chosen value={{ unit, choose }}>{children}</Chosen>;
}

export function useTemperatureUnit() {
  return useContext(Chosen);
}
