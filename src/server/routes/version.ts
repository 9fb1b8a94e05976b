/** The version that a change was made from, by its entity tag in `If-Match` (RFC 9110). */
import { z } from '../../api/zod.ts';
import { Refusal } from '../problem.ts';

export const withVersion = z.object({
  'if-match': z.string().optional().describe('The entity tag of the version changed, such as `"3"`.'),
});

/** @throws Refusal when it names no version */
export function versionOf(ifMatch: string | undefined): number {
  const version = /^"([1-9]\d{0,14})"$/.exec(ifMatch ?? '')?.[1];
  if (!version)
    throw new Refusal(
      'version-missing',
      'Send `If-Match` with the entity tag of the version that you changed, such as "3".',
    );
  return Number(version);
}
