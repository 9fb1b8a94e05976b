// Builds dist/node (server, command line, library) and dist/web (the pages), each when what it is built from changed.
import { chmodSync } from 'node:fs';
import { join } from 'node:path';
import { npm, root, say } from './run.mjs';
import { hashOf, onceFor } from './stamp.mjs';

const ALWAYS = ['package.json', 'package-lock.json', 'tsconfig.json'];

/** What each output is built from. Both leave tests out. */
const OUTPUTS = [
  { name: 'node', from: [...ALWAYS, 'tsconfig.build.json', 'src'], skip: /^src\/web\/|\.test\.tsx?$/ },
  { name: 'web', from: [...ALWAYS, 'vite.config.ts', 'src'], skip: /^src\/(server|cli)\/|\.test\.tsx?$/ },
];

export async function buildOutputs() {
  await Promise.all(
    OUTPUTS.map(({ name, from, skip }) => {
      const hash = hashOf(root, from, (file) => !skip.test(file));
      return onceFor(join(root, 'dist', `.${name}-stamp`), hash, async () => {
        say(`building dist/${name}`);
        // A test runner that asks for a build has an environment of its own, and would get pages made for developing.
        await npm(['run', '--silent', `build:${name}`], { NODE_ENV: 'production' });
        // npm runs a checkout's own command as a file; the compiler writes files that can't be run.
        if (name === 'node') chmodSync(join(root, 'dist/node/cli/main.js'), 0o755);
      });
    }),
  );
}
