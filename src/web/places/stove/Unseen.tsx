/** What no thermometer shows, as the twin believes it: the middle, and between what 8 in 10 of its pans lie. */
import type { Range } from '../../../core/twin/range.ts';
import type { UnseenName } from '../../../core/twin/unseen.ts';
import { Drop } from '../../parts/Drop.tsx';
import { ebcOf, span } from '../../parts/figures.ts';
import { likelyHueIndex } from '../../parts/syrupPaint.ts';
import type { TellingWords } from './rehearsal/ToldTable.tsx';
import type { View } from './view.ts';

export const unseenWords: Readonly<Record<UnseenName, TellingWords>> = {
  waterShare: { name: 'Water', show: (value) => (value * 100).toFixed(1), after: ' %' },
  inverted: { name: 'Inverted', show: (value) => (value * 100).toFixed(0), after: ' %' },
  ph: { name: 'Hot pH', show: (value) => value.toFixed(1), after: '' },
  a430: { name: 'Colour', show: ebcOf, after: ' EBC' },
};

const figures = ['waterShare', 'inverted', 'ph'] as const;

export function Unseen({ view }: { readonly view: View }) {
  const { unseen } = view;
  return (
    <section className="not-seen" aria-labelledby="not-seen">
      <h2 id="not-seen">What can’t be seen</h2>
      <dl>
        {figures.map((name) => (
          <Figure key={name} name={name} range={unseen[name]} />
        ))}
        <div className="colour">
          <dt>{unseenWords.a430.name}, 10 % solution</dt>
          <dd className="drops">
            {(['low', 'mid', 'high'] as const).map((mark) => (
              <Drop key={mark} tone={toneOf(unseen.a430[mark], unseen)} size={mark === 'mid' ? 56 : 40} />
            ))}
          </dd>
          <Values name="a430" range={unseen.a430} />
        </div>
      </dl>
    </section>
  );
}

const toneOf = (a430: number, { waterShare }: View['unseen']) => ({
  a430,
  hueIndex: likelyHueIndex(a430),
  waterShare: Math.min(1, Math.max(0, waterShare.mid)),
});

function Figure({ name, range }: { readonly name: UnseenName; readonly range: Range }) {
  return (
    <div>
      <dt>{unseenWords[name].name}</dt>
      <Values name={name} range={range} />
    </div>
  );
}

function Values({ name, range }: { readonly name: UnseenName; readonly range: Range }) {
  const { show, after } = unseenWords[name];
  return (
    <>
      <dd className="mid">
        {show(range.mid)}
        {after}
      </dd>
      <dd className="range">
        {span(range, show)}
        {after}
      </dd>
    </>
  );
}
