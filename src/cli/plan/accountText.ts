/** What a plan comes to, as lines of a page. */

import { stoppedC } from '../../core/planning/account/coldBath.ts';
import { neutraliseBelowC, neutralisedPh, neutralisingStrength } from '../../core/planning/account/neutraliser.ts';
import type { Account } from '../../core/planning/account.ts';
import { judgedAtGPerL } from '../../core/planning/taste.ts';
import { pairs } from '../table.ts';
import { grams } from './stepText.ts';

const priceNames = {
  sugar: 'sugar',
  maltExtract: 'malt extract',
  alkali: 'alkali',
  acid: 'acid',
  energy: 'energy',
  bought: 'bought',
};

export function accountText(account: Account): string {
  return `Comes to\n${pairs([
    ['time', `${account.minutes.toFixed(0)} min, ${account.energyKWh.toFixed(2)} kWh`],
    ['lost', `${grams(account.lostKg)} on pan and spoon; ${grams(account.steamKg)} of water as steam`],
    ...minerals(account),
    ['your water', waterText(account)],
    ['', distilledText(account)],
    ...hardness(account),
    ...bath(account),
    ...shape(account),
    ...neutraliser(account),
    ...cost(account),
  ])}`;
}

type Rows = readonly (readonly [string, string])[];

function minerals({ sodiumGPerKg, calciumGPerKg }: Account): Rows {
  const rows: Rows = [
    [
      'sodium',
      `${sodiumGPerKg.toFixed(2)} g/kg: ${(judgedAtGPerL * sodiumGPerKg).toFixed(0)} mg/L in a beer with ${judgedAtGPerL} g/L`,
    ],
    [
      'calcium',
      `${calciumGPerKg.toFixed(2)} g/kg: ${(judgedAtGPerL * calciumGPerKg).toFixed(0)} mg/L in a beer with ${judgedAtGPerL} g/L`,
    ],
  ];
  return rows.filter((_, i) => [sodiumGPerKg, calciumGPerKg][i] > 0);
}

function waterText({ water: { equivalents, asNaohG } }: Account): string {
  return `${(1000 * equivalents).toFixed(2)} meq of base against distilled, as ${asNaohG.toFixed(2)} g of NaOH`;
}

function hardness({ water }: Account): Rows {
  if (!water.hardness) return [];
  const { calciumGPerKg, bindsAtMost, boilsOutMgPerL } = water.hardness;
  const binds = bindsAtMost > 0 ? `; binds ${(100 * bindsAtMost).toFixed(1)} % of the alkali at most, for minutes` : '';
  return [
    ['its hardness', `changes nothing in the plan: ${(1000 * calciumGPerKg).toFixed(0)} mg/kg of calcium${binds}`],
    ['', `boiled before and poured off its chalk it loses ${boilsOutMgPerL.toFixed(0)} mg/L of alkalinity at most`],
  ];
}

function distilledText({ distilled: { colourFactor, invertedMore } }: Account): string {
  const signed = (value: number): string => `${value < 0 ? '' : '+'}${value.toFixed(1)}`;
  return `distilled instead: colour ${signed(100 * (colourFactor - 1))} %, inverted ${signed(100 * invertedMore)} points`;
}

function bath({ bathKg }: Account): Rows {
  if (bathKg === undefined) return [];
  return [['cold bath', `${grams(bathKg)} of cold water, to stop the cook at ${stoppedC} °C`]];
}

function shape({ tray, letDownKg }: Account): Rows {
  const rows: [string, string][] = [];
  if (tray) {
    const side = 100 * Math.sqrt(tray.areaM2);
    const thick = (1000 * tray.thicknessM).toFixed(0);
    rows.push([
      'tray',
      `${(1e4 * tray.areaM2).toFixed(0)} cm2 (${side.toFixed(0)} x ${side.toFixed(0)} cm) for ${thick} mm; dry, and metal or silicone`,
    ]);
  }
  if (letDownKg !== undefined) rows.push(['let down', `${grams(letDownKg)} of water by mass balance, steam apart`]);
  return rows;
}

function neutraliser({ neutraliser: found }: Account): Rows {
  if (!found) return [];
  const percent = 100 * neutralisingStrength;
  return [
    [
      'neutralise',
      `with ${grams(found.naohKg)} NaOH or ${grams(found.caoh2Kg)} Ca(OH)2 (pure), as ${percent} % in cold water,`,
    ],
    ['', `below ${neutraliseBelowC} °C, in steel or plastic, never aluminium, to pH ${neutralisedPh} by a strip`],
  ];
}

function cost({ cost: found }: Account): Rows {
  if (!found) return [];
  const without = found.unpriced.map((name) => priceNames[name]);
  const note = without.length > 0 ? `, without ${without.join(', ')}` : '';
  const rows: [string, string][] = [['cost', `${found.batch.toFixed(2)}, ${found.perKg.toFixed(2)} a kg${note}`]];
  if (found.saved !== undefined) {
    rows.push([
      found.saved >= 0 ? 'saves' : 'costs more',
      `${Math.abs(found.saved).toFixed(2)} against as much bought sugar`,
    ]);
  }
  return rows;
}
