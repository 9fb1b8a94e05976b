import { expect, it } from 'vitest';
import { hasOwnSqlite, nodeVersionProblem } from './node-version.mjs';

it.each(['20.19.0', '20.20.2', '22.0.0', '24.21.0', '100.0.0'])('Node %s will do', (version) => {
  expect(nodeVersionProblem(version)).toBeUndefined();
});

it.each(['18.20.8', '20.18.3', '9.9.9'])(
  'Node %s is refused with a sentence that names it and what is needed',
  (version) => {
    expect(nodeVersionProblem(version)).toContain(`needs Node 20.19 or newer, and this is Node ${version}`);
  },
);

it("Node's own SQLite is used from 22.16 on", () => {
  expect(['20.20.2', '22.15.1', '22.16.0', '24.0.0'].map(hasOwnSqlite)).toEqual([false, false, true, true]);
});
