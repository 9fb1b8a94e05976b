/** The kitchen sheet of a plan as one file: what to weigh, mix and do, ticked off with a pencil. One page of A4 or Letter; no network, no script. */
import { hazardOf } from '../../advice/hazards.ts';
import { hatchingWords } from '../../colour/hatching.ts';
import { ebcFromA430 } from '../../colour/scales.ts';
import type { Course } from '../../pan/course.ts';
import type { Kit } from '../../pan/kit.ts';
import { centralValues } from '../../pan/model.ts';
import type { Step } from '../../pan/steps.ts';
import { neutralisingAmounts } from '../../planning/account/neutraliser.ts';
import type { Account } from '../../planning/account.ts';
import type { Forecast } from '../../planning/forecast.ts';
import { cautionsFor, handledIn, replacesNothing } from '../../planning/handling.ts';
import type { Plan } from '../../planning/plan.ts';
import { formatSpoon } from '../../units/formatSpoon.ts';
import { deedText, tooHot } from '../stepDeeds.ts';
import { stepTitles } from '../words.ts';
import { escaped, pageOf, tableOf } from './markup.ts';
import { grams, span } from './numbers.ts';
import { planLineSvg } from './planLineSvg.ts';
import { sheetStyle } from './sheetStyle.ts';
import { alkaliTitle, weighedRows } from './weighed.ts';

export interface Sheet {
  readonly plan: Plan;
  /** Its central course, a row each second. */
  readonly course: Course;
  readonly kit: Kit;
  readonly forecast: Forecast;
  readonly account: Pick<Account, 'neutraliser'>;
  /** By what it was made, and when: the foot of the page. */
  readonly made: string;
}

export function sheetHtml({ plan, course, kit, forecast, account, made }: Sheet): string {
  const { name, form, route } = plan.request;
  const minutes = Math.round(forecast.steps.at(-1)?.endMinute.mid ?? 0);
  const total = `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, '0')} min`;
  const colour = forecast.steps.at(-1)?.a430;
  const lands = colour ? `, 8 in 10 cooks of it between ${span(ebcRange(colour), 1).replace(' to ', ' and ')} EBC` : '';
  return pageOf(
    `${name}: kitchen sheet`,
    sheetStyle,
    `<h1>${escaped(name)} <span class="total">${total}</span></h1>
<p>${grams(plan.yieldKg)}, ${form}, ${route} route${lands}. Kit: ${escaped(kit.name)}; dial to ${kit.stove.notches}, pan of ${(100 * kit.pan.diameterM).toFixed(0)} cm, spoon of ${formatSpoon(kit.spoonM3)}.</p>
<div class="prepare">
${weighedTable(plan)}
${alkaliTable(plan, account)}
</div>
${hazardPart(plan)}
<ul class="rules">${cautionsFor(plan)
      .map(({ id, head, text }) => `<li data-statement="${id}"><strong>${escaped(head)}</strong> ${escaped(text)}</li>`)
      .join('\n')}</ul>
${stepsTable(plan, course, forecast)}
${planLineSvg(course, centralValues(kit), forecast)}
<p class="note">${hatchingWords} Dashes hold 8 in 10 cooks. Below: the dial, dots for water, wedges for alkali.</p>
<p class="note">${replacesNothing}</p>
<p class="foot"><span>Cooked on <span class="blank"></span> by <span class="blank"></span></span><span>${escaped(made)}</span></p>`,
  );
}

const ebcRange = ({ low, mid, high }: Forecast['yieldKg']) => ({
  low: ebcFromA430(low),
  mid: ebcFromA430(mid),
  high: ebcFromA430(high),
});

function weighedTable({ amounts: { charge }, letDownWaterKg }: Plan): string {
  const rows = weighedRows(charge).filter(([, much]) => Number.parseFloat(much) > 0);
  if (letDownWaterKg > 0) rows.push(['Hot water, about', grams(letDownWaterKg)]);
  return `<div class="weighed">${tableOf('Weigh out', ['What', 'How much'], rows)}</div>`;
}

/** The alkali of the cook, or the little that neutralises afterwards. */
function alkaliTable({ request, amounts: { alkali } }: Plan, { neutraliser }: Sheet['account']): string {
  const mixed = alkali
    ? [
        [alkaliTitle(alkali.substance), grams(alkali.weighedKg)],
        ['into cold water', grams(alkali.waterKg)],
        [`gives ${alkali.parts.length} parts of`, grams((alkali.weighedKg + alkali.waterKg) / alkali.parts.length)],
      ]
    : neutralisingRows(request.alkali, neutraliser);
  if (mixed.length === 0) return '';
  const caption = alkali ? 'Alkali, before the heat is on' : 'Alkali, to neutralise the cooled syrup';
  return `<div class="weighed">${tableOf(caption, ['What', 'How much'], mixed)}</div>`;
}

function neutralisingRows(
  substance: Plan['request']['alkali'],
  neutraliser: Account['neutraliser'],
): readonly (readonly string[])[] {
  if (!neutraliser) return [];
  const { pureKg, waterKg } = neutralisingAmounts(substance, neutraliser);
  return [
    [alkaliTitle(substance), grams(pureKg)],
    ['into cold water', grams(waterKg)],
  ];
}

function hazardPart(plan: Plan): string {
  const handled = handledIn(plan);
  if (!handled) return '';
  const { id, word, says } = hazardOf(handled.substance, handled.strength);
  const kind = handled.substance === 'sodiumHydroxide' ? 'solution' : 'slurry';
  const also = plan.cautions.map(({ message }) => ` Mind: ${escaped(message)}.`).join('');
  return `<p class="hazard" data-statement="${id}"><strong>⚠ ${word}</strong> A ${(100 * handled.strength).toFixed(0)} % ${kind}: ${escaped(says)}${also}</p>`;
}

function stepsTable(plan: Plan, course: Course, { steps }: Forecast): string {
  const titles = stepTitles(plan.steps.map(({ kind }) => kind));
  const rows = plan.steps.map((step, i) => {
    const { minutes, endMinute, spoonfuls } = steps[i];
    const deed = deedText(step, course, i, (celsius) => `${celsius.toFixed(0)} °C`);
    return `<tr><th scope="row"><span class="box"></span><strong>${titles[i]}</strong> <small>${deed}</small></th><td>${bandText(step)}</td>${[
      minutes,
      endMinute,
    ]
      .map((range) => `<td>${range.mid.toFixed(0)} min <small>${span(range, 1)}</small></td>`)
      .join('')}<td>${spoonfuls.mid.toFixed(0)} <small>${span(spoonfuls, 1)}</small></td></tr>`;
  });
  const heads = ['Step', 'Band', 'Lasts', 'Ends at', 'Spoonfuls'].map((head) => `<th scope="col">${head}</th>`);
  return `<table class="steps"><caption>Steps<span>${tooHot}</span><span>Small: where 8 in 10 cooks are.</span></caption><thead><tr>${heads.join('')}</tr></thead><tbody>${rows.join('\n')}</tbody></table>`;
}

const bandText = ({ bandC: [low, high] }: Step): string => `${low.toFixed(0)}–${high.toFixed(0)} °C`;
