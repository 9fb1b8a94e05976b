/** Where what is known came from: each cook and each check, in the order in which they were learned from. */
import type { CheckKind } from '../../../core/learn/checks/check.ts';
import { checkWords } from '../../../core/learn/words.ts';
import type { Learned, Lesson } from '../../../core/pan/learned.ts';
import { dayText } from '../../parts/dayText.ts';
import { useKeptCooks } from './useKeptCooks.ts';

export function Lessons({ learned }: { readonly learned: Learned | undefined }) {
  const { cooks } = useKeptCooks();
  const lessons = learned?.lessons ?? [];
  const nameOf = ({ kind, name }: Lesson) =>
    kind === 'check'
      ? (checkWords[name as CheckKind] ?? name)
      : (cooks.find(({ id }) => id === name)?.name ?? `Cook ${name}`);
  return (
    <section aria-labelledby="lessons" className="lessons">
      <h2 id="lessons">Learned from</h2>
      {lessons.length === 0 ? (
        <p className="quiet">Nothing yet: no check was kept, and no cook was learned from.</p>
      ) : (
        <ol>
          {lessons.map((lesson) => (
            <li key={`${lesson.name}/${lesson.at ?? ''}`}>
              <strong>{nameOf(lesson)}</strong>
              <span className="small quiet">
                {lesson.kind === 'check' ? 'check' : 'cook'}
                {lesson.at && `, ${dayText(lesson.at)}`}, {lesson.observations} readings
              </span>
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}
