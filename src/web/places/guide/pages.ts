/** The pages of the documentation, as they stand in the project's `docs`: found by address, each fetched when it is opened. */
import { Marked, type Tokens } from 'marked';

export const kinds = {
  tutorial: { title: 'Learn', lead: 'A first plan and a first rehearsal, step by step.' },
  'how-to': { title: 'Do', lead: 'One job a page.' },
  explanation: { title: 'Understand', lead: 'Why the model says what it says, and how far to trust it.' },
  reference: { title: 'Look up', lead: 'Every command, event, alarm and number.' },
} as const;
export type Kind = keyof typeof kinds;

export interface GuidePage {
  /** Below `/guide/`, without the ending. */
  readonly address: string;
  readonly kind: Kind;
  readonly title: string;
  readonly text: string;
}

const sources = import.meta.glob<string>('../../../../docs/{tutorial,how-to,reference,explanation}/*.md', {
  query: '?raw',
  import: 'default',
});

export const addresses: readonly string[] = Object.keys(sources).map(addressOf).sort();

/** @returns none when there is no page at this address */
export async function pageAt(address: string): Promise<GuidePage | undefined> {
  const path = Object.keys(sources).find((each) => addressOf(each) === address);
  const source = path === undefined ? undefined : await sources[path]?.();
  return source === undefined ? undefined : pageOf(address, source);
}

export const allPages = async (): Promise<GuidePage[]> =>
  (await Promise.all(addresses.map(pageAt))).filter((page) => page !== undefined);

/** A page from its Markdown: the first heading is its title, what stands before it is for the project's own tests. */
export function pageOf(address: string, source: string): GuidePage {
  const body = source.replace(/^---\n[\s\S]*?\n---\n/, '');
  const title = /^# (.+)$/m.exec(body)?.[1] ?? address;
  return { address, kind: address.split('/')[0] as Kind, title, text: body };
}

/** HTML of a page's Markdown: links to other pages lead within the guide, those to the project's files are named only. */
export function htmlOf({ address, text }: GuidePage): string {
  const marked = new Marked({
    renderer: {
      link({ href, tokens }: Tokens.Link) {
        const words = this.parser.parseInline(tokens);
        if (/^(https?:|mailto:)/.test(href)) return `<a href="${href}" rel="noreferrer">${words}</a>`;
        const target = resolved(address, href);
        return target === undefined ? `<span>${words}</span>` : `<a href="/guide/${target}">${words}</a>`;
      },
      table(token: Tokens.Table) {
        const row = (cells: readonly Tokens.TableCell[], tag: 'td' | 'th') =>
          `<tr>${cells.map((cell) => `<${tag}>${this.parser.parseInline(cell.tokens)}</${tag}>`).join('')}</tr>`;
        const rows = token.rows.map((cells) => row(cells, 'td')).join('');
        return `<div class="wide" tabindex="0" role="region" aria-label="Table"><table><thead>${row(token.header, 'th')}</thead><tbody>${rows}</tbody></table></div>`;
      },
    },
  });
  return marked.parse(text, { async: false });
}

function resolved(from: string, href: string): string | undefined {
  const [path = '', part] = href.split('#');
  const target = path === '' ? from : new URL(path, `file:///${from}`).pathname.slice(1).replace(/\.md$/, '');
  return addresses.includes(target) ? `${target}${part ? `#${part}` : ''}` : undefined;
}

function addressOf(path: string): string {
  return path.replace(/^.*\/docs\//, '').replace(/\.md$/, '');
}
