/** What to mind about a glass: minerals, the share of sugar, how a sugar goes in, and what the numbers leave out. */

import { anywhere, practice, type Statement } from '../advice/safety.ts';
import { fermentabilitySource } from './fermentability.ts';
import type { Given } from './given.ts';
import { type Glass, usualRest, type WhenAdded } from './glass.ts';
import { type Metal, mineralGuideline } from './mineralGuidance.ts';

export interface GlassCaution extends Statement {
  readonly level: 'note' | 'warning' | 'strong warning';
}

/** Above it wort is short of nitrogen. */
const mostShareWithoutNote = 0.2;
/** Stronger than what a kitchen makes, by five. */
const kitchenSpecific430 = 0.5;

const wayIn: Readonly<Record<WhenAdded, Pick<GlassCaution, 'text' | 'source'>>> = {
  kettle: {
    text: 'Into the kettle: heat off, let it stop boiling, stir until nothing lies at the bottom (pieces sink and scorch), then boil again. Hot wort may foam up.',
    source: practice,
  },
  late: {
    text: 'Late in the boil or at flame-out: heat off and stirred; at least 10 minutes at 80 °C or more, so that it is clean. More of its aroma stays.',
    source: practice,
  },
  fermenter: {
    text: 'Into the fermenter: boiled for some minutes in a little water, cooled, and poured in slowly after 1 to 3 days. Never hot, and never dry into beer full of gas: it foams over.',
    source: practice,
  },
};

export function glassCautions(glass: Glass, given: Given): readonly GlassCaution[] {
  return [...mineralCautions(glass, given), ...shareCautions(given), ...sugarCautions(glass, given), ...waysIn(glass)];
}

function mineralCautions({ rest, doses }: Glass, { beer }: Given): GlassCaution[] {
  const amounts: readonly [Metal, number, number][] = [
    ['sodium', beer.sodiumMgPerL.mid, rest.sodiumMgPerL],
    ['calcium', beer.calciumMgPerL.mid, rest.calciumMgPerL],
  ];
  const reached = amounts.flatMap(([metal, added, before]): GlassCaution[] => {
    const guideline = added > 0 ? mineralGuideline(metal, added, added + before) : undefined;
    if (guideline === undefined) return [];
    const { meaning, id, level, source, date, region } = guideline;
    const text = `${metal[0]?.toUpperCase()}${metal.slice(1)} +${added.toFixed(0)} mg/L, ${(added + before).toFixed(0)} in all: ${meaning}.`;
    return [{ id, level, text, source, date, region }];
  });
  const unknown = doses.filter(({ sugar }) => sugar.minerals === null).map(({ sugar }) => sugar.name);
  if (unknown.length === 0) return reached;
  const text = `Sodium and calcium of ${unknown.join(', ')} are not known and not counted; say what alkali went in.`;
  return [...reached, { id: 'GLA-UNTOLD', level: 'note', text, source: 'mass balance', ...anywhere }];
}

function shareCautions({ beer: { extractShare } }: Given): GlassCaution[] {
  if (extractShare.mid <= mostShareWithoutNote) return [];
  const text = `${(100 * extractShare.mid).toFixed(0)} % of the extract is sugar: wort nitrogen falls in proportion, and the end of fermentation may drag. Pitch more, feed nutrient, or add part of it in the fermenter.`;
  return [
    {
      id: 'GLA-NITROGEN',
      level: 'warning',
      text,
      source: 'guideline and adjunct texts (seen quoted); 20 % by practice',
      ...anywhere,
    },
  ];
}

function sugarCautions({ doses, rest }: Glass, { empirical }: Given): GlassCaution[] {
  const found: GlassCaution[] = [];
  for (const { name, specific430 } of doses.map(({ sugar }) => sugar)) {
    if (specific430.mid < kitchenSpecific430) continue;
    const text = `${name} is as strong as caramel colour; if it is your own, measure it by a weighed dilution before you trust this.`;
    found.push({
      id: 'GLA-STRONG',
      level: 'warning',
      text,
      source: 'plain caramel colour is at 0.9 L/(g cm) (seen quoted)',
      ...anywhere,
    });
  }
  if (empirical.outside) {
    const text = 'The empirical colour is beyond the 50 SRM that it was fitted to.';
    found.push({ id: 'GLA-EMPIRICAL', level: 'note', text, source: 'Morey, mid-1990s (seen quoted)', ...anywhere });
  }
  const usual = rest.attenuation === usualRest.attenuation ? ', as is usual' : '';
  const text = `What yeast takes of a browned sugar goes by its colour unless you measured it. The rest is taken to attenuate by ${Math.round(100 * rest.attenuation)} %${usual}, with the sugar as without.`;
  if (doses.length > 0)
    found.push({ id: 'GLA-FERMENTABLE', level: 'note', text, source: fermentabilitySource, ...anywhere });
  return found;
}

function waysIn({ doses }: Glass): GlassCaution[] {
  const used = [...new Set(doses.map(({ added }) => added))];
  return used.map((added) => ({ id: `GLA-${added.toUpperCase()}`, level: 'note', ...wayIn[added], ...anywhere }));
}
