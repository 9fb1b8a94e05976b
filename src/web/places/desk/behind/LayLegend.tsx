/** Which line is which above the pan line, and the choice of the saved plan that lies behind. */
import { useId } from 'react';
import { momentText } from '../../../parts/dayText.ts';
import { LineSample } from '../../../parts/panLine/BehindLine.tsx';
import type { Laying } from './useBehind.ts';
import './behind.css';

interface LayLegendProps {
  readonly laying: Laying;
  /** Name of the plan on the Desk. */
  readonly here: string;
}

const none = '';

export function LayLegend({ laying, here }: LayLegendProps) {
  const { plans, behind, choose } = laying;
  const id = useId();
  if (plans.length === 0) return null;
  return (
    <div className="lay-legend">
      {behind && (
        <span className="lay-here">
          <LineSample kind="main" />
          {here}, on the Desk
        </span>
      )}
      <span className="lay-choice">
        {behind && <LineSample kind="behind" />}
        <label htmlFor={id}>{behind ? 'behind it' : 'Lay behind this plan'}</label>
        <select
          id={id}
          className="inline-pick"
          value={behind?.id ?? none}
          onChange={({ target }) => choose(target.value === none ? undefined : target.value)}
        >
          <option value={none}>nothing</option>
          {plans.map(({ id: each, request, created }) => (
            <option key={each} value={each}>
              {nameOf(request.name, created)}
            </option>
          ))}
        </select>
      </span>
      {behind && (
        <button type="button" className="plain" onClick={() => choose(undefined)}>
          Take it away
        </button>
      )}
    </div>
  );
}

/** Versions of one plan often share its name. */
const nameOf = (name: string, created: string): string => `${name}, ${momentText(created)}`;
