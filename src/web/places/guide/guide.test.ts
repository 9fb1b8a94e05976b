import { describe, expect, it } from 'vitest';
import { indexOf } from './find.ts';
import { addresses, htmlOf, pageAt, pageOf } from './pages.ts';

const page = (text: string) => pageOf('explanation/spoonfuls', text);

describe('the guide', () => {
  it('takes the title from the first heading, and leaves out what stands before it', () => {
    const { title, kind, text } = page('---\nkind: explanation\n---\n\n# Late spoonfuls\n\nThey bite.\n');
    expect([title, kind]).toEqual(['Late spoonfuls', 'explanation']);
    expect(text).not.toContain('kind:');
  });

  it('leads links between pages within the app, names files of the project, and leaves the web alone', () => {
    const html = htmlOf(
      page(
        '# A\n\n[b](pan.md) [c](../how-to/rehearse-and-cook.md#rehearse) [d](../../src/index.ts) [e](https://example.org/)',
      ),
    );
    expect(html).toContain('<a href="/guide/explanation/pan">b</a>');
    expect(html).toContain('<a href="/guide/how-to/rehearse-and-cook#rehearse">c</a>');
    expect(html).toContain('<span>d</span>');
    expect(html).toContain('<a href="https://example.org/" rel="noreferrer">e</a>');
  });

  it('has every page of the documentation, and none of the decisions', async () => {
    expect(addresses).toContain('tutorial/first-plan');
    expect(addresses.filter((address) => address.startsWith('decisions'))).toEqual([]);
    for (const address of addresses) expect((await pageAt(address))?.title).not.toBe(address);
  });

  it('finds by beginnings of words and through a slip of the finger, all words together', () => {
    const index = indexOf([
      page('# Late spoonfuls\n\nThey bite harder near 147 degrees.'),
      pageOf('how-to/x', '# Lye\n\nGoggles on.'),
    ]);
    expect(index.find('spoon bite').map(({ title }) => title)).toEqual(['Late spoonfuls']);
    expect(index.find('gogles').map(({ title }) => title)).toEqual(['Lye']);
    expect(index.find('spoonful goggles')).toEqual([]);
    expect(index.find('bite')[0]?.around).toContain('They bite harder');
  });
});
