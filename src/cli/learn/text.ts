/** What was learned as a person reads it. */
import type { Change } from '../../core/learn/changes.ts';
import type { Verdict } from '../../core/learn/judged.ts';
import { table } from '../table.ts';
import type { LearnedLog, LearnedLogs } from './learnAll.ts';
import { faultText, shownAs, tellings } from './words.ts';

export function learnText({ logs, kit, changes }: LearnedLogs): string {
  const sections = [logs.map(logText).join('\n')];
  if (changes.length === 0) return [...sections, `${kit.name}: nothing was learned.`].join('\n\n');
  const open = changes.filter(({ toldBy }) => toldBy);
  sections.push(`${kit.name}: 10-90 % ranges\n${changesTable(changes)}`);
  if (open.length > 0) sections.push(`These cooks did not tell:\n${open.map(openText).join('\n')}`);
  sections.push('One true value in five lies outside its range.');
  return sections.join('\n\n');
}

function logText({ file, outcome }: LearnedLog): string {
  if (outcome.kind === 'unfit')
    return `${file}: not learned from.\n${outcome.faults.map((fault) => `  ${faultText(fault)}`).join('\n')}`;
  const { verdict } = outcome;
  if (outcome.kind === 'learned') return `${file}: learned from. ${verdictText(verdict)}`;
  return `${file}: not learned from. No kit that was likely tells this cook. ${verdictText(verdict)}`;
}

function verdictText({ misfit, mostMisfit, readingsOffC, shift, shiftLimit }: Verdict): string {
  return `Readings off by ${readingsOffC.toFixed(2)} °C (misfit ${misfit.toFixed(2)}, allowed ${mostMisfit}); kit moved by ${shift.toFixed(0)} (allowed ${shiftLimit.toFixed(0)}).`;
}

function changesTable(changes: readonly Change[]): string {
  const rows = changes.map(({ name, before, after, narrowing }) => {
    const { label, scale, digits } = shownAs[name];
    const text = (value: number) => (value * scale).toFixed(digits);
    const range = ({ low, high }: Change['before']) => `${text(low)} to ${text(high)}`;
    return [label, range(before), range(after), `${(100 * (1 - narrowing)).toFixed(0)} %`];
  });
  return table(
    [
      { head: '', align: 'left' },
      { head: 'before', align: 'right' },
      { head: 'after', align: 'right' },
      { head: 'narrower by', align: 'right' },
    ],
    rows,
  );
}

function openText({ name, toldBy }: Change): string {
  return `  ${shownAs[name].label}: ${toldBy ? tellings[toldBy] : ''} would`;
}
