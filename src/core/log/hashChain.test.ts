import { expect, it } from 'vitest';
import { sampleCook, sha256 } from '../../../test/sampleCook.ts';
import { canonicalJson } from './canonicalJson.ts';
import { brokenLinks, chainStart, type Link, linkHash } from './hashChain.ts';

function chainOf(contents: readonly string[]): Link[] {
  const links: Link[] = [];
  for (const content of contents) {
    const link = { content, tServer: '2031-05-09T18:30:00.000Z', prevHash: links.at(-1)?.hash ?? chainStart };
    links.push({ ...link, hash: linkHash(link, sha256) });
  }
  return links;
}

const links = chainOf(sampleCook(20).events.map(canonicalJson));

it('is whole as it was made', () => {
  expect(brokenLinks(links, sha256)).toEqual([]);
});

it('hashes the canonical JSON of event, link and time', () => {
  const [{ hash, content, ...rest }] = links;
  expect(hash).toBe(sha256(canonicalJson({ ...rest, event: JSON.parse(content) })));
});

it('shows an event that was changed, a time that was changed, an event taken out and two exchanged', () => {
  const changed = (place: number, change: Partial<Link>) => links.with(place, { ...links[place], ...change });
  const content = links[5].content.replace(/1/, '2');
  expect(brokenLinks(changed(5, { content }), sha256)).toEqual([5]);
  expect(brokenLinks(changed(5, { tServer: '2031-05-09T18:30:00.001Z' }), sha256)).toEqual([5]);
  expect(brokenLinks(links.toSpliced(5, 1), sha256)).toEqual([5]);
  expect(brokenLinks(links.with(5, links[6]).with(6, links[5]), sha256)).toEqual([5, 6, 7]);
});

it('shows an event that was changed together with its hash, at the next', () => {
  const forged = { ...links[5], content: links[5].content.replace(/1/, '2') };
  const hash = linkHash(forged, sha256);
  expect(brokenLinks(links.with(5, { ...forged, hash }), sha256)).toEqual([6]);
});
