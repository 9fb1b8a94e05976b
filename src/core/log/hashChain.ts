/** A chain of hashes through a cook's events: whatever was changed, taken out or put in between shows at the link after it. */
import { canonicalJson } from './canonicalJson.ts';

/** SHA-256 of a text's UTF-8 bytes, in hexadecimal. The core has none of its own. */
export type Sha256 = (text: string) => string;

/** What the first event of a cook is linked to. */
export const chainStart = '0'.repeat(64);

export interface Link {
  /** The event as its client made it, in canonical form. */
  readonly content: string;
  readonly tServer: string;
  readonly prevHash: string;
  readonly hash: string;
}

/** Hash of the canonical JSON of `{ event, prevHash, tServer }`; `content` is canonical already. */
export function linkHash({ content, tServer, prevHash }: Omit<Link, 'hash'>, sha256: Sha256): string {
  return sha256(`{"event":${content},"prevHash":${canonicalJson(prevHash)},"tServer":${canonicalJson(tServer)}}`);
}

/** Places of the links that were changed or do not follow from the one before; none when the chain, from the hash that it starts with, is whole. */
export function brokenLinks(links: readonly Link[], sha256: Sha256, start = chainStart): number[] {
  return links.flatMap((link, place) => {
    const follows = link.prevHash === (links[place - 1]?.hash ?? start);
    return follows && link.hash === linkHash(link, sha256) ? [] : [place];
  });
}
