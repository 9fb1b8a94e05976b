// Writes the generated files of `examples`: `npm run examples`.
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { exampleFiles } from './examples/files.ts';

const folder = fileURLToPath(new URL('../examples/', import.meta.url));
mkdirSync(folder, { recursive: true });
for (const [name, text] of Object.entries(exampleFiles())) {
  writeFileSync(`${folder}${name}`, text);
  console.log(`examples/${name}`);
}
