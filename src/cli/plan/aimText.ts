/** Where a plan made for a colour should land, and how likely it does. */
import { ebcFromA430, srmFromA430 } from '../../core/colour/scales.ts';
import { justVisible } from '../../core/planning/odds.ts';
import { tasteNames } from '../../core/planning/taste.ts';
import { pairs, wrapped } from '../table.ts';
import type { Aimed } from './aimedPlan.ts';
import { ebcText } from './stepText.ts';

/** One in so many, where per cents get small. */
function chance(share: number, draws: number): string {
  if (share === 0) return `less than 1 in ${draws}`;
  return share < 0.095 ? `1 in ${Math.round(1 / share)}` : `${(100 * share).toFixed(0)} %`;
}

const ebc = (a430: number): string => ebcText(ebcFromA430(a430));

export function aimText({ landed, odds, band }: Aimed): string {
  const { aimA430, made, request, hueLeft, short } = landed;
  const low = `${ebc(odds.a430.low)}-${ebc(odds.a430.high)}`;
  return `Aim\n${pairs([
    ['colour', `${ebc(aimA430)} EBC, ${srmFromA430(aimA430).toFixed(0)} SRM of a 10 % solution`],
    ...(hueLeft > 0 ? [['swatch', `no sugar comes nearer to it than dE00 ${hueLeft.toFixed(1)}`] as const] : []),
    ['planned', `${ebc(made.a430)} EBC by the ${request.route} route, ${dosed(landed)}`],
    ['8 in 10', `land at ${low} EBC (${odds.draws} drawn kits)`],
    ['just as dark', `${chance(odds.justVisible, odds.draws)} within a just visible difference (dE00 ${justVisible})`],
    ['near enough', `${chance(odds.band ?? 0, odds.draws)} within ${ebc(band[0])}-${ebc(band[1])} EBC`],
    ['taste', tasteNames.map((name) => `${name} ${made.taste[name].toFixed(0)}`).join(', ')],
    ...(short === undefined ? [] : [['short of it', wrapped(short, ' '.repeat(16))] as const]),
  ])}`;
}

function dosed(landed: Aimed['landed']): string {
  const further = (landed.request.moreHolds ?? []).map(({ celsius, minutes }) => `, ${celsius} °C ${minutes} min`);
  return `${routeDosed(landed)}${further.join('')}`;
}

function routeDosed({ request }: Aimed['landed']): string {
  if (request.route === 'pale') return `inverting for ${request.invertMinutes} min`;
  const { alkaliGPerKg, brownMinutes, roastMinutes, route } = request;
  const roast = route === 'deep' ? `, roast ${roastMinutes} min` : '';
  return `${alkaliGPerKg} g/kg, brown ${brownMinutes} min${roast}`;
}
