/** What was learned as a person reads it. */
import type { Verdict } from '../../core/learn/judged.ts';
import { faultText } from '../../core/learn/words.ts';
import type { LearnedLog, LearnedLogs } from './learnAll.ts';
import { changesTable, openText } from './numbers.ts';

export function learnText({ logs, kit, changes }: LearnedLogs): string {
  const sections = [logs.map(logText).join('\n')];
  if (changes.length === 0) return [...sections, `${kit.name}: nothing was learned.`].join('\n\n');
  sections.push(`${kit.name}: 10-90 % ranges\n${changesTable(changes)}`);
  const open = openText(changes);
  if (open) sections.push(`These cooks did not tell:\n${open}`);
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
