/** How each hidden thing is named, scaled and rounded. */

import type { KitchenName, Revealed } from '../../core/advice/reveal.ts';
import { ebcFromA430 } from '../../core/colour/scales.ts';
import type { UnseenName } from '../../core/twin/unseen.ts';
import { kitchenShown, type Shown } from '../cook/kitchenShown.ts';

export const shownAs: Readonly<Record<Revealed<'temperatureC' | UnseenName | KitchenName>['name'], Shown>> = {
  temperatureC: { label: 'temperature °C', key: 'temperature_Cel', scale: 1, digits: 1 },
  waterShare: { label: 'water %', key: 'water_%', scale: 100, digits: 2 },
  inverted: { label: 'inverted %', key: 'inverted_%', scale: 100, digits: 1 },
  ph: { label: 'pH, hot', key: 'ph_[pH]', scale: 1, digits: 2 },
  a430: { label: 'colour EBC', key: 'colour_{EBC}', scale: ebcFromA430(1), digits: 1 },
  ...kitchenShown,
};
