/** An invented club's kitchen to look round in: put in, with where to look, and taken out in one act. */
import { useState } from 'react';
import { Link } from 'wouter';
import type { Demo } from '../../../api/demo.ts';
import { useTitle } from '../../parts/useTitle.ts';
import { failureOf } from '../../records/failureOf.ts';
import { useDemo, useMoveDemo } from './useDemo.ts';
import './demo.css';

export default function DemoPlace() {
  useTitle('Demo');
  const demo = useDemo();
  const moving = useMoveDemo();
  const { data } = demo;
  return (
    <main id="main" className="demo">
      <h1>A kitchen to look round in</h1>
      <p>
        The Damson Row allotment club brews in a church-hall kitchen. It kept two kits, four plans, a rehearsal and four
        cooks, and what their sugars gave four beers.
      </p>
      <p className="quiet">
        The club is invented and its cooks are simulated. Its things stand among yours, and nothing of yours is touched.
      </p>
      {moving.isPending && (
        <p role="status">{data?.isIn ? 'It is being taken out.' : 'Its cooks are being simulated.'}</p>
      )}
      {moving.isError && <p role="alert">{failureOf(moving.error, data?.isIn ? 'Not taken out' : 'Not put in')}</p>}
      {demo.isError && <p role="alert">{failureOf(demo.error, 'Not known whether it is in')}</p>}
      {data?.isIn && !moving.isPending && <Tour demo={data} />}
      {data && !data.isIn && (
        <button type="button" className="main" disabled={moving.isPending} onClick={() => moving.mutate('in')}>
          Put the club’s things in
        </button>
      )}
      {data?.isIn && <TakeOut busy={moving.isPending} onTakeOut={() => moving.mutate('out')} />}
    </main>
  );
}

/** What has since been taken away is left out. */
function Tour({ demo: { cooks, lots, glasses } }: { readonly demo: Demo }) {
  const [one, other] = cooks;
  return (
    <ul>
      {one && other && (
        <li>
          <Link href={`/book/over?cooks=${one},${other}`}>Two bonfire cooks over one another</Link>: the second got half
          as much lye again. How much of its darker colour is that?
        </li>
      )}
      {one && (
        <li>
          <Link href={`/book/${one}`}>The first of them in the Book</Link>: play it again, with what the twin believed.
        </li>
      )}
      {lots[0] && (
        <li>
          <Link href={`/shelf/${lots[0]}`}>Its sugar on the Shelf</Link>: weighed, measured, tasted blind, half used up.
        </li>
      )}
      {glasses[0] && (
        <li>
          <Link href={`/glass/${glasses[0]}`}>The stout that it went into</Link>: what it gave, and how it was liked.
        </li>
      )}
      <li>
        <Link href="/">A plan of your own</Link>, or <Link href="/stove">a rehearsal</Link>, with the club’s kits.
      </li>
    </ul>
  );
}

function TakeOut({ busy, onTakeOut }: { readonly busy: boolean; readonly onTakeOut: () => void }) {
  const [asking, setAsking] = useState(false);
  if (!asking) {
    return (
      <button type="button" disabled={busy} onClick={() => setAsking(true)}>
        Take the club’s things out
      </button>
    );
  }
  return (
    <fieldset>
      <legend>Everything of the club goes, with what was changed in it or noted of it. It can’t be undone.</legend>
      <button type="button" className="main" disabled={busy} onClick={onTakeOut}>
        Take it all out
      </button>
      <button type="button" onClick={() => setAsking(false)}>
        Leave it in
      </button>
    </fieldset>
  );
}
