/** What tells a rehearsal from a live cook on every view: a striped edge, the word, and first aid in one tap. */
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import type { Planned } from '../planned.ts';

interface FrameProps {
  readonly planned: Planned | undefined;
  readonly foam: ReactNode;
}

export function Frame({ planned, foam }: FrameProps) {
  return (
    <>
      <div className="rehearsal-edge" aria-hidden="true" />
      <header className="strip">
        <div>
          <h1>Rehearsal</h1>
          <p className="small">
            {planned ? `${planned.name}, hidden pan ${planned.begun.rehearsal?.seed ?? 1}` : 'Simulated pan'}
          </p>
        </div>
        <div className="strip-acts">
          {foam}
          <Link className="button first-aid" href="/care">
            First aid
          </Link>
        </div>
      </header>
    </>
  );
}
