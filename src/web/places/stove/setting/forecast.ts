/** What the screen forecasts: the milestones of cooling of what was poured, in words and minutes from the pour. */
import { castCooling, panCooling } from '../../../../core/lot/cooling.ts';
import type { Poured } from '../../../../core/lot/yield.ts';
import type { Kit } from '../../../../core/pan/kit.ts';
import { prepareKit } from '../../../../core/pan/preparedKit.ts';
import type { Form } from '../../../../core/planning/request.ts';
import type { Range } from '../../../../core/twin/range.ts';
import type { Tray } from './tray.ts';

export interface Milestone {
  readonly name: string;
  /** Minutes from the pour; none when it never comes. */
  readonly minutes: Range | undefined;
  readonly otherwise?: string;
  /** What it opens, or a remark. */
  readonly remark: string;
}

export type SettingForecast =
  | {
      readonly kind: 'forecast';
      readonly milestones: readonly Milestone[];
      readonly thicknessM: number | undefined;
      /** Minutes in a freezer from hand-warm until it breaks; none when it needs none, or never does. */
      readonly freezer: Range | undefined;
    }
  | { readonly kind: 'none'; readonly because: string };

interface Case {
  readonly poured: Poured;
  readonly form: Form;
  readonly kit: Kit;
  readonly tray: Tray;
}

export function forecastOf(one: Case): SettingForecast {
  try {
    return one.form === 'hard' ? castForecast(one) : panForecast(one);
  } catch (error) {
    if (error instanceof RangeError) return { kind: 'none', because: error.message };
    throw error;
  }
}

function castForecast({ poured, kit, tray }: Case): SettingForecast {
  const cooling = castCooling({
    massKg: poured.massKg.mid,
    solids: poured.solids.mid,
    glassC: poured.setting.glassC.mid,
    temperatureC: poured.temperatureC.mid,
    trayM: [tray.widthCm / 100, tray.lengthCm / 100],
    base: tray.base,
    roomC: kit.roomC,
  });
  const { breaksInRoom, breaksInFreezer } = cooling;
  return {
    kind: 'forecast',
    thicknessM: cooling.thicknessM,
    freezer: breaksInFreezer && breaksInFreezer.mid > 0 ? breaksInFreezer : undefined,
    milestones: [
      { name: 'Top hand-warm', minutes: cooling.surfaceHandWarm, remark: 'the middle is hotter still' },
      { name: 'Hand-warm all through', minutes: cooling.handWarm, remark: 'it may be lifted, or go in a freezer' },
      {
        name: 'Breaks dry, left in the room',
        minutes: breaksInRoom,
        otherwise: breaksInFreezer ? 'Not in this room' : 'Never',
        remark: otherwiseFor(breaksInRoom, breaksInFreezer),
      },
    ],
  };
}

function otherwiseFor(inRoom: Range | undefined, inFreezer: Range | undefined): string {
  if (inRoom) return 'seal it at once: it draws water from the air';
  return inFreezer
    ? 'this sugar is too soft at room temperature; a freezer makes it brittle'
    : 'this sugar stays soft, even in a freezer';
}

function panForecast({ poured, kit }: Case): SettingForecast {
  const { massKg, solids, temperatureC } = poured;
  const handWarm = panCooling(prepareKit(kit), {
    massKg: massKg.mid,
    solids: solids.mid,
    temperatureC: temperatureC.mid,
  });
  return {
    kind: 'forecast',
    thicknessM: undefined,
    freezer: undefined,
    milestones: [{ name: 'Hand-warm, left in the pan', minutes: handWarm, remark: 'lid ajar, so that steam gets out' }],
  };
}
