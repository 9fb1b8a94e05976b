// Runs the benches named on the command line, or all of them, one after the other, from the output of `tsc -p bench`.
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));
const benches = readdirSync(here)
  .filter((file) => file.endsWith('.ts'))
  .map((file) => file.slice(0, -'.ts'.length));
const wanted = process.argv.slice(2);
const unknown = wanted.filter((name) => !benches.includes(name));
if (unknown.length > 0) {
  console.error(`no bench ${unknown.join(', ')}; there are ${benches.join(', ')}`);
  process.exit(2);
}
for (const name of wanted.length > 0 ? wanted : benches) {
  const built = join(here, '..', 'dist', 'bench', 'bench', `${name}.js`);
  const { status } = spawnSync(process.execPath, [built], { stdio: 'inherit', cwd: join(here, '..') });
  if (status !== 0) process.exit(1);
}
