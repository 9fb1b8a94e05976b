/** Plans that are saved, to open or delete. */
import type { PlanRecord } from '../../../api/plan.ts';
import { dayText } from '../../parts/dayText.ts';
import { grams } from '../../parts/figures.ts';

interface SavedPlansProps {
  readonly plans: readonly PlanRecord[];
  readonly openId: string | undefined;
  readonly onOpen: (plan: PlanRecord) => void;
  readonly onRemove: (plan: PlanRecord) => void;
}

export function SavedPlans({ plans, openId, onOpen, onRemove }: SavedPlansProps) {
  return (
    <section className="saved" aria-labelledby="saved">
      <h2 id="saved">Saved plans</h2>
      {plans.length === 0 && <p className="quiet small">None yet.</p>}
      <ul>
        {plans.map((plan) => {
          const { id, request, created } = plan;
          return (
            <li key={id}>
              <a
                href={`/?plan=${id}`}
                aria-current={id === openId ? 'true' : undefined}
                onClick={(event) => {
                  if (event.metaKey || event.ctrlKey || event.shiftKey) return;
                  event.preventDefault();
                  onOpen(plan);
                }}
              >
                <strong>{request.name}</strong>
                <span className="small quiet">
                  {grams(request.massKg)} g, {request.form}, {request.route}, {dayText(created)}
                </span>
              </a>
              <button type="button" className="plain" onClick={() => onRemove(plan)}>
                Delete<span className="unseen"> {request.name}</span>
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
