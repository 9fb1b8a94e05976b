/** A way in for what another Umberpan passed on, and what became of it. */
import { Link } from 'wouter';
import { FileOutcome } from './FileOutcome.tsx';
import { type TakenIn, useTakeIn } from './useTakeIn.ts';

interface TakeInProps {
  readonly nameOf: (cookId: string) => string;
}

export function TakeIn({ nameOf }: TakeInProps) {
  const { mutate, data, isPending } = useTakeIn();
  return (
    <section className="take-in" aria-labelledby="take-in">
      <h2 id="take-in">Passed on to you</h2>
      <label className="take-in-file">
        <span>Take in a cook</span>
        {/* No types are named: phones know none for a log file, and would not let it be chosen. */}
        <input
          type="file"
          aria-describedby="take-in-what"
          disabled={isPending}
          onChange={({ target }) => {
            const file = target.files?.[0];
            if (file) mutate(file);
            // The same file may be chosen once more.
            target.value = '';
          }}
        />
      </label>
      <p className="small quiet" id="take-in-what">
        The log file of a cook comes into the Book. A report, or a plan as JSON, gives its plan to the Desk, for your
        own kit.
      </p>
      <FileOutcome isRead={isPending} refused={data?.kind === 'refused' ? data.why : undefined}>
        <Taken taken={data} nameOf={nameOf} />
      </FileOutcome>
    </section>
  );
}

function Taken({ taken, nameOf }: TakeInProps & { readonly taken: TakenIn | undefined }) {
  if (taken?.kind === 'cook') {
    return (
      <p>
        ✓ <Link href={`/book/${taken.cook}`}>{nameOf(taken.cook)}</Link>
        {taken.new === 0 ? ': all of it was here already.' : `: ${taken.new} of its ${taken.events} events came in.`}
      </p>
    );
  }
  if (taken?.kind !== 'plan') return null;
  return (
    <p>
      ✓ The plan is saved. <Link href={`/?plan=${taken.plan.id}`}>Open “{taken.plan.request.name}” on the Desk</Link>
    </p>
  );
}
