/** Full-text search over the guide, in the page: no request leaves the machine. */
import MiniSearch from 'minisearch';
import { allPages, type GuidePage } from './pages.ts';

export interface Hit {
  readonly address: string;
  readonly title: string;
  /** The words around the first place where it says so. */
  readonly around: string;
}

export interface Index {
  find(words: string): readonly Hit[];
}

const most = 12;

export async function indexed(): Promise<Index> {
  return indexOf(await allPages());
}

export function indexOf(pages: readonly GuidePage[]): Index {
  const search = new MiniSearch<GuidePage>({
    idField: 'address',
    fields: ['title', 'text'],
    searchOptions: { prefix: true, fuzzy: 0.15, boost: { title: 3 }, combineWith: 'AND' },
  });
  search.addAll(pages);
  return {
    find: (words) =>
      search
        .search(words)
        .flatMap(({ id, terms }) => {
          const page = pages.find(({ address }) => address === id);
          return page ? [{ address: page.address, title: page.title, around: around(page.text, terms) }] : [];
        })
        .slice(0, most),
  };
}

function around(text: string, terms: readonly string[]): string {
  const plain = text.replaceAll(/[#*`|[\]]|\(\S+\.md\)|-{3,}/g, ' ').replaceAll(/\s+/g, ' ');
  const places = terms.map((term) => plain.toLowerCase().indexOf(term.toLowerCase())).filter((place) => place >= 0);
  const from = Math.max(0, Math.min(...places, plain.length) - 60);
  return `${from > 0 ? '… ' : ''}${plain.slice(from, from + 160).trim()} …`;
}
