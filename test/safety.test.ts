// Whatever is said for safety can be traced: by an id of its own, to a source, a date and a region.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { saidForSafety } from '../scripts/reference/safety.ts';

const all = Object.values(saidForSafety()).flat();
const src = fileURLToPath(new URL('../src/', import.meta.url));

describe('what is said for safety', () => {
  it('has an id of its own, a source, a date and a region', () => {
    expect(all.length).toBeGreaterThan(50);
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
    for (const { id, says, source, date, region } of all) {
      expect(id).toMatch(/^(LIM|HAZ|CAU|CHECK|CARE|GLA|PRI)-[A-Z\d]+(-[A-Z\d]+)*$/);
      expect(says, id).not.toMatch(/^\s*$|undefined|NaN/);
      expect(source, id).not.toMatch(/^\s*$|undefined/);
      expect(date, id).toMatch(/^\d{4}-\d{2}-\d{2}$/);
      expect(region, id).toMatch(/^(any|[A-Z]{2})$/);
    }
  });

  it('is all in its reference: no id of a limit, class, caution or check, of sugar or beer, stands in the code that is not there', () => {
    const known = new Set(all.map(({ id }) => id));
    const code = readdirSync(src, { recursive: true, encoding: 'utf8' }).filter(
      (path) => /\.tsx?$/.test(path) && !/\.test\.tsx?$/.test(path),
    );
    const named = code.flatMap((path) => [
      ...readFileSync(join(src, path), 'utf8').matchAll(/'((?:LIM|HAZ|CAU|CHECK|CARE|GLA|PRI)-[A-Z\d-]+)'/g),
    ]);
    expect(named.length).toBeGreaterThan(all.length / 2);
    for (const [, id = ''] of named) expect(known, id).toContain(id);
  });

  it.each(['safe to leave', 'guaranteed', 'harmless', 'no risk'])('never says “%s”', (phrase) => {
    for (const { id, says } of all) expect(says.toLowerCase(), id).not.toContain(phrase);
  });
});
