/** Stoves, pans and thermometers as they are spoken of. */
import type { PanMaterial, StoveKind, ThermometerKind } from '../../../core/pan/kit.ts';

export const stoveNames: Readonly<Record<StoveKind, string>> = {
  gas: 'Gas',
  coil: 'Electric coil',
  ceramic: 'Ceramic hob',
  induction: 'Induction',
};

export const materialNames: Readonly<Record<PanMaterial, string>> = {
  stainless: 'Stainless steel',
  enamel: 'Sound enamel',
  copper: 'Copper',
  castIron: 'Cast iron',
  aluminium: 'Aluminium',
  unknownCoating: 'Coating of unknown kind',
};

export const thermometerNames: Readonly<Record<ThermometerKind, string>> = {
  digital: 'Digital probe',
  dial: 'Dial',
};

/** Names as the options of a choice. */
export function optionsOf<Value extends string>(names: Readonly<Record<Value, string>>) {
  return Object.entries(names) as unknown as readonly (readonly [Value, string])[];
}
