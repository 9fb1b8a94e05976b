/** The guide: the project's own documentation, to read and to search, offline too. */
import { type MouseEvent, useEffect, useState } from 'react';
import { Link, useLocation, useParams } from 'wouter';
import { useTitle } from '../../parts/useTitle.ts';
import { Finder } from './Finder.tsx';
import { allPages, type GuidePage, htmlOf, type Kind, kinds, pageAt } from './pages.ts';
import './guide.css';

export default function Guide() {
  const address = useParams()['*'] ?? '';
  return (
    <main id="main" className="guide">
      {address === '' ? <Contents /> : <Page key={address} address={address} />}
    </main>
  );
}

function Contents() {
  useTitle('Guide');
  const [pages, setPages] = useState<readonly GuidePage[]>();
  useEffect(() => void allPages().then(setPages), []);
  return (
    <>
      <h1>Guide</h1>
      <Finder />
      <div className="guide-kinds">
        {(Object.keys(kinds) as Kind[]).map((kind) => (
          <section key={kind} aria-labelledby={`guide-${kind}`}>
            <h2 id={`guide-${kind}`}>{kinds[kind].title}</h2>
            <p className="quiet">{kinds[kind].lead}</p>
            <ul>
              {pages
                ?.filter((page) => page.kind === kind)
                .map((page) => (
                  <li key={page.address}>
                    <Link href={`/guide/${page.address}`}>{page.title}</Link>
                  </li>
                ))}
            </ul>
          </section>
        ))}
      </div>
    </>
  );
}

function Page({ address }: { readonly address: string }) {
  const [page, setPage] = useState<GuidePage | 'none'>();
  const [, go] = useLocation();
  useEffect(() => void pageAt(address).then((found) => setPage(found ?? 'none')), [address]);
  useTitle(page === undefined || page === 'none' ? 'Guide' : `${page.title} · Guide`);

  /** Links within the guide stay within the app. */
  function follow(event: MouseEvent) {
    const href = (event.target as Element).closest('a')?.getAttribute('href');
    if (!href?.startsWith('/guide/') || event.metaKey || event.ctrlKey || event.shiftKey) return;
    event.preventDefault();
    go(href);
    window.scrollTo(0, 0);
  }

  if (page === undefined) return null;
  return (
    <>
      <p className="screen">
        <Link href="/guide" className="back">
          Guide
        </Link>
      </p>
      {page === 'none' ? (
        <p>There is no such page in the guide.</p>
      ) : (
        // biome-ignore lint/a11y/useKeyWithClickEvents: a link's Enter comes as a click
        // biome-ignore lint/security/noDangerouslySetInnerHtml: the text is the project's own, built in
        <article onClick={follow} dangerouslySetInnerHTML={{ __html: htmlOf(page) }} />
      )}
    </>
  );
}
