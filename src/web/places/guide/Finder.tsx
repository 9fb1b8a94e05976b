/** Search of the guide: the index is made when the field is first used. */
import { useRef, useState } from 'react';
import { Link } from 'wouter';
import type { Hit, Index } from './find.ts';

export function Finder() {
  const [words, setWords] = useState('');
  const [hits, setHits] = useState<readonly Hit[]>([]);
  const index = useRef<Promise<Index>>(undefined);
  const last = useRef('');

  async function look(typed: string) {
    setWords(typed);
    last.current = typed;
    index.current ??= import('./find.ts').then(({ indexed }) => indexed());
    const found = (await index.current).find(typed);
    if (last.current === typed) setHits(found);
  }

  return (
    <search className="guide-find">
      <label>
        Search the guide
        <input type="search" value={words} onChange={({ target }) => void look(target.value)} />
      </label>
      <p className="small quiet" role="status">
        {words.trim() === '' ? '' : hits.length === 0 ? 'Nothing found.' : `${hits.length} found`}
      </p>
      <ul>
        {hits.map(({ address, title, around }) => (
          <li key={address}>
            <Link href={`/guide/${address}`}>{title}</Link>
            <p className="small quiet">{around}</p>
          </li>
        ))}
      </ul>
    </search>
  );
}
