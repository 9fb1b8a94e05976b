import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { faultsOfFiled } from '../../src/api/filedEvent.ts';
import { differencesOf, factsOf } from '../../src/core/book/differences.ts';
import { followedBy } from '../../src/core/book/following.ts';
import { landedOf } from '../../src/core/book/landed.ts';
import { readCookFile } from '../../src/core/log/cookFile.ts';
import { foldCook } from '../../src/core/log/fold.ts';
import { sha256 } from '../../test/sampleCook.ts';
import { exampleFiles } from './files.ts';

const pathOf = (name: string) => fileURLToPath(new URL(`../../examples/${name}`, import.meta.url));

it('the examples are what the script makes of the club; else `npm run examples`', () => {
  const files = Object.entries(exampleFiles());
  expect(files).toHaveLength(4);
  for (const [name, text] of files) {
    expect(existsSync(pathOf(name)), name).toBe(true);
    expect(readFileSync(pathOf(name), 'utf8') === text, name).toBe(true);
  }
});

/** A cook of the examples, gone through by the twin. */
function cooked(name: string) {
  const file = readCookFile(readFileSync(pathOf(name), 'utf8'), sha256);
  if (file.kind === 'refused') throw new Error(`${name}, line ${file.line}: ${file.reason}`);
  expect(file.events.flatMap((event) => faultsOfFiled(event))).toEqual([]);
  const state = foldCook(file.events);
  const followed = followedBy(state);
  if (!followed) throw new Error(`${name} does not say how it began`);
  return factsOf(state, landedOf(followed) ?? null);
}

it('what was cooked otherwise is what differs: lye and hold in the hall, and the kit in the shed', () => {
  const [hall, darker, shed] = ['bonfire', 'bonfire-darker', 'bonfire-in-the-shed'].map((name) =>
    cooked(`${name}.ndjson`),
  );
  const value = (facts: typeof hall, what: string) =>
    differencesOf([facts]).find((fact) => fact.what === what)?.values[0] ?? Number.NaN;
  expect(value(darker, 'Pure alkali given') / value(hall, 'Pure alkali given')).toBeCloseTo(1.5, 6);
  expect(value(darker, 'Brown, length')).toBeGreaterThan(value(hall, 'Brown, length') + 5);
  expect(value(darker, 'Colour')).toBeGreaterThan(1.2 * value(hall, 'Colour'));
  expect(value(shed, 'Pure alkali given')).toBeCloseTo(value(hall, 'Pure alkali given'), 6);
  expect(Math.abs(value(shed, 'Cold pan to the end') - value(hall, 'Cold pan to the end'))).toBeGreaterThan(2);
}, 60_000);
