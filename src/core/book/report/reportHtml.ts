/**
 * A cook as one file that another person can repeat it by: what was weighed, how each step went, what came of it, what to mind. It opens
 * from a disk without a network, prints, and carries the plan as data that `--plan` reads.
 */
import type { Belief } from '../../advice/followed.ts';
import { believedColour } from '../../colour/pool.ts';
import { a430FromEbc } from '../../colour/scales.ts';
import type { CookState } from '../../log/fold.ts';
import { instantText } from '../../log/instant.ts';
import type { Step } from '../../pan/steps.ts';
import { cautionsFor, cautionText, replacesNothing } from '../../planning/handling.ts';
import type { PlanRequest } from '../../planning/request.ts';
import { doingsOf } from '../doings.ts';
import { browningAtC, dosesOf, invertingAtC } from '../doses.ts';
import { entriesOf, entryText } from '../entryText.ts';
import type { Landed } from '../landed.ts';
import { stepWords } from '../words.ts';
import { lotsPart, type ReportedLot } from './lotsPart.ts';
import { escaped, jsonInScript, pageOf, tableOf } from './markup.ts';
import { grams, span } from './numbers.ts';
import { panLineSvg } from './panLineSvg.ts';
import { planInReport } from './planOf.ts';
import { reportStyle } from './reportStyle.ts';
import { alkaliTitle, weighedRows } from './weighed.ts';

export interface Reported {
  readonly state: CookState;
  /** What the twin believed, from the start to the end. */
  readonly beliefs: readonly Belief[];
  readonly landed: Landed | undefined;
  readonly lots: readonly ReportedLot[];
}

/** @returns nothing for a log that does not say how the cook began */
export function reportHtml({ state, beliefs, landed, lots }: Reported): string | undefined {
  const { begun, mode, startMs } = state;
  if (!begun) return undefined;
  const request = begun.body.request as PlanRequest;
  const { kit, steps, amounts, rehearsal } = begun.body;
  const name = String(request.name ?? 'A cook');
  const day = instantText(startMs ?? 0).slice(0, 10);
  const { learned: _, ...plainKit } = kit;
  const plan = { format: 'umberpan-plan-1', request, kit: plainKit, amounts, steps };
  const { endS, poured } = doingsOf(state);
  return pageOf(
    `${name}, ${day}`,
    reportStyle,
    `<h1>${escaped(name)}</h1>
<p>${mode === 'rehearsal' ? `<span class="word">Rehearsal on a simulated pan${rehearsal?.surprises ? ', with surprises' : ''}</span> ` : ''}${day}, ${(endS / 60).toFixed(0)} minutes${poured ? '' : ', not poured'}. Kit: ${escaped(kit.name)}.</p>
${landedPart(landed)}
${panLineSvg(state, beliefs)}
<p class="quiet">Dots: readings. Line with grey band: what the twin of the pan believed, 8 in 10. Dashed: the bands wanted. Below: the dial, dots for water, wedges for alkali; diamonds are spoon tests. The ribbon is the syrup’s estimated colour as a film of 1 mm.</p>
<h2>What went in</h2>
${amountsPart(state)}
<h2>How it went</h2>
${stepsPart(state)}
<h2>What came of it</h2>
${resultPart(landed)}
${lotsPart(lots)}
<h2>Mind</h2>
<ul>${cautionsFor({ request, amounts })
      .map((caution) => `<li>${escaped(cautionText(caution))}</li>`)
      .join('\n')}</ul>
<p class="quiet">${replacesNothing}</p>
<h2>Log</h2>
<div class="log">${logPart(state)}</div>
<h2>Again</h2>
<p>This file carries its plan: <code>umberpan rehearse --plan THIS-FILE</code> rehearses it, <code>umberpan simulate --plan THIS-FILE</code> tells its course.</p>
${jsonInScript(planInReport, plan)}`,
  );
}

function landedPart(landed: Landed | undefined): string {
  if (!landed) return '';
  const { ebc, waterShare } = landed;
  const colour = believedColour(a430FromEbc(ebc.mid), waterShare.mid);
  return `<p class="landed"><span class="drop" style="background:${colour}"></span> ${ebc.mid.toFixed(0)} EBC</p>
<p class="quiet">Colour of a 10 % solution as the twin believes it, ${span(ebc, 1)}, 8 in 10.</p>`;
}

function amountsPart({ begun }: CookState): string {
  if (!begun) return '';
  const { charge, alkali } = begun.body.amounts;
  const rows = weighedRows(charge);
  if (alkali) {
    const mixed = `${grams(alkali.weighedKg)} into ${grams(alkali.waterKg)} of cold water (${(100 * alkali.strength).toFixed(0)} %), in ${alkali.parts.length} parts`;
    rows.push([alkaliTitle(alkali.substance), mixed]);
  }
  return tableOf('Weighed', ['What', 'How much'], rows);
}

function stepsPart(state: CookState): string {
  const doings = doingsOf(state);
  const planned = state.begun?.body.steps ?? [];
  const rows = dosesOf(doings).map((dose, i) => [
    stepWords[dose.kind],
    wantedText(planned[doings.spans[i].index]),
    `${dose.minutes.toFixed(0)} min`,
    dose.meanC === null ? '' : `${dose.meanC.toFixed(1)} °C`,
    dose.hottestC === null ? '' : `${dose.hottestC.toFixed(1)} °C`,
    String(Number(dose.spoonfuls.toFixed(1))),
    dose.invertingMinutes.toFixed(0),
    dose.browningMinutes.toFixed(0),
  ]);
  const head = [
    'Step',
    'Wanted',
    'Took',
    'Mean',
    'Hottest',
    'Spoonfuls',
    `Inverting min at ${invertingAtC} °C`,
    `Browning min at ${browningAtC} °C`,
  ];
  return tableOf('Steps, with minutes weighed by how fast each reaction goes', head, rows);
}

function wantedText({ bandC, end, letDown }: Step): string {
  if (letDown) return `to ${(100 * letDown.solids).toFixed(0)} °Bx`;
  if ('reachedC' in end) return `to ${end.reachedC.toFixed(0)} °C`;
  return `${end.heldMinutes.toFixed(0)} min at ${bandC[0].toFixed(0)}–${bandC[1].toFixed(0)} °C`;
}

function resultPart(landed: Landed | undefined): string {
  const believed: [string, string][] = landed
    ? [
        ['Colour of a 10 % solution, twin', `${span(landed.ebc, 1)} EBC`],
        ['Inverted, twin', `${span(landed.inverted, 100)} %`],
        ['Water left, twin', `${span(landed.waterShare, 100, 1)} %`],
      ]
    : [['Not poured', '']];
  return tableOf('Result; the twin’s ranges hold 8 in 10', ['What', 'Value'], believed);
}

function logPart(state: CookState): string {
  const steps = state.begun?.body.steps ?? [];
  const rows = entriesOf(state)
    .filter(({ kind }) => kind !== 'reading')
    .map((entry) => [`${(entry.timeS / 60).toFixed(1)} min`, entryText(entry, steps)]);
  return tableOf('All but the readings', ['When', 'What'], rows);
}
