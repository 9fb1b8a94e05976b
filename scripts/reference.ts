// Writes the generated files of `docs/reference`: `npm run reference`.
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { referenceFiles } from './reference/files.ts';

const folder = fileURLToPath(new URL('../docs/reference/', import.meta.url));
mkdirSync(folder, { recursive: true });
for (const [name, text] of Object.entries(await referenceFiles())) {
  writeFileSync(`${folder}${name}`, text);
  console.log(`docs/reference/${name}`);
}
